package org.plumbrow.design.draft;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.check.DesignChecks;
import org.plumbrow.design.check.ItemsOfChecks;
import org.plumbrow.design.drawing.Quantities;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateRule;
import org.plumbrow.project.gate.GateRuleSet;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Items of the gate to designed, judged from the design's own data. Where nobody has begun a design they cannot tell. */
@Configuration(proxyBeanMethods = false)
class DesignRules {

    private static final Finding NOT_FROZEN =
            new Finding.CannotTell("No revision is frozen.", "The designer freezes one.");

    /** What a look at a gate reads of a design, once for all of its rules. */
    private record Looked(Designs.Draft draft, List<DesignChecks.Group> checks, Optional<Revision> newest) {}

    /** Empty while nobody has begun a design. */
    private record Begun(Optional<Looked> looked) {}

    private final DesignRows rows;
    private final RevisionRows revisions;
    private final Designs designs;

    DesignRules(DesignRows rows, RevisionRows revisions, Designs designs) {
        this.rows = rows;
        this.revisions = revisions;
        this.designs = designs;
    }

    @Bean
    GateRuleSet gateOnDesigned() {
        Stream<GateRule> ofChecks = ItemsOfChecks.items().stream()
                .map(item -> rule(item, looked -> judged(ItemsOfChecks.of(item, looked.checks()))));
        Stream<GateRule> ofPapers = Stream.of(
                rule("designed.16", DesignRules::newestIsWhatIsDrawn), rule("designed.17", DesignRules::counted));
        return new GateRuleSet(Stream.concat(ofChecks, ofPapers).toList());
    }

    private GateRule rule(String item, Function<Looked, Finding> judge) {
        return GateRule.of(
                item,
                look -> look.once(Begun.class, this::read)
                        .looked()
                        .map(judge)
                        .orElseGet(() -> new Finding.CannotTell("No design is begun.", "The designer begins it.")));
    }

    private Begun read(ProjectFacts project) {
        if (rows.request(project.id()).isEmpty()) {
            return new Begun(Optional.empty());
        }
        Designs.Draft draft = designs.draft(project);
        return new Begun(
                Optional.of(new Looked(draft, DesignChecks.of(draft.facts()), revisions.newest(project.id()))));
    }

    static Finding judged(List<Check> checks) {
        Optional<Check> failing = first(checks, Verdict.FAIL);
        if (failing.isPresent()) {
            return new Finding.Broken(failing.get().sentence(), failing.get().remedy());
        }
        Optional<Check> engineer = first(checks, Verdict.NEEDS_ENGINEER);
        if (engineer.isPresent()) {
            return new Finding.CannotTell(
                    engineer.get().sentence(), engineer.get().remedy() + " A licensed engineer decides.");
        }
        Optional<Check> unknown = first(checks, Verdict.CANNOT_TELL);
        if (unknown.isPresent()) {
            return new Finding.CannotTell(
                    unknown.get().sentence(), unknown.get().remedy());
        }
        if (checks.isEmpty()) {
            return new Finding.CannotTell("The design does not show this yet.", "The designer draws it.");
        }
        long remarks = checks.stream()
                .filter(check -> check.verdict() == Verdict.REMARK)
                .count();
        return new Finding.Satisfied("%d %s%s."
                .formatted(
                        checks.size(),
                        checks.size() == 1 ? "check passes" : "checks pass",
                        remarks == 0 ? "" : ", " + remarks + " with a remark"));
    }

    private static Optional<Check> first(List<Check> checks, Verdict verdict) {
        return checks.stream().filter(check -> check.verdict() == verdict).findFirst();
    }

    private static Finding newestIsWhatIsDrawn(Looked looked) {
        if (looked.newest().isEmpty()) {
            return NOT_FROZEN;
        }
        Revision newest = looked.newest().get();
        return newest.parts().equals(looked.draft().parts())
                ? new Finding.Recorded("Revision " + newest.letter() + " is frozen.", Set.of(AnswerKind.DOCUMENT))
                : new Finding.Broken(
                        "The design has changed since revision " + newest.letter() + ".",
                        "Freeze it as the next revision.");
    }

    private static Finding counted(Looked looked) {
        return looked.newest()
                .map(newest -> Quantities.of(newest.facts()).lines().size())
                .filter(lines -> lines > 0)
                .<Finding>map(lines -> new Finding.Recorded(
                        "Bill of quantities: %d lines, with lead times.".formatted(lines), Set.of(AnswerKind.DOCUMENT)))
                .orElse(NOT_FROZEN);
    }
}
