package org.plumbrow.design.draft;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.plumbrow.calc.electrical.Check;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.check.DesignChecks;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Items of the gate to designed, judged from the design's own data. Where nobody has begun a design they cannot tell. */
@Configuration(proxyBeanMethods = false)
class DesignRules {

    /** What a look at a gate reads of a design, once for all of its rules. */
    record Looked(Optional<Designs.Draft> draft, List<Check> checks, Optional<Revision> newest) {
        static final Looked NOTHING = new Looked(Optional.empty(), List.of(), Optional.empty());
    }

    private static Looked look(GateLook look, DesignRows rows, RevisionRows revisions, Designs designs) {
        return look.once(Looked.class, project -> {
            if (rows.request(project.id()).isEmpty()) {
                return Looked.NOTHING;
            }
            Designs.Draft draft = designs.draft(project);
            List<Check> checks = DesignChecks.of(draft.facts()).stream()
                    .flatMap(group -> group.checks().stream())
                    .toList();
            return new Looked(Optional.of(draft), checks, revisions.newest(project.id()));
        });
    }

    /** A rule that is held by some of the checks, by words of their subjects. */
    private record OfChecks(
            String item, DesignRows rows, RevisionRows revisions, Designs designs, List<String> subjects)
            implements GateRule {

        @Override
        public Finding check(GateLook look) {
            Looked looked = look(look, rows, revisions, designs);
            if (looked.draft().isEmpty()) {
                return new Finding.CannotTell("No design is begun.", "The designer begins it.");
            }
            List<Check> own = looked.checks().stream()
                    .filter(check -> subjects.stream().anyMatch(check.subject()::contains))
                    .toList();
            return judged(own);
        }
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

    /** The newest revision is what is drawn. */
    private record Frozen(String item, DesignRows rows, RevisionRows revisions, Designs designs) implements GateRule {
        @Override
        public Finding check(GateLook look) {
            Looked looked = look(look, rows, revisions, designs);
            if (looked.draft().isEmpty() || looked.newest().isEmpty()) {
                return new Finding.CannotTell("No revision is frozen.", "The designer freezes one.");
            }
            Revision newest = looked.newest().get();
            return newest.parts().equals(looked.draft().get().parts())
                    ? new Finding.Recorded("Revision " + newest.letter() + " is frozen.", Set.of(AnswerKind.DOCUMENT))
                    : new Finding.Broken(
                            "The design has changed since revision " + newest.letter() + ".",
                            "Freeze it as the next revision.");
        }
    }

    /** A bill of quantities can be counted from what is frozen. */
    private record Counted(String item, DesignRows rows, RevisionRows revisions, Designs designs) implements GateRule {
        @Override
        public Finding check(GateLook look) {
            return look(look, rows, revisions, designs)
                    .newest()
                    .map(newest -> Quantities.of(newest.facts()).size())
                    .filter(lines -> lines > 0)
                    .<Finding>map(lines -> new Finding.Recorded(
                            "Bill of quantities: %d lines, with lead times.".formatted(lines),
                            Set.of(AnswerKind.DOCUMENT)))
                    .orElseGet(() -> new Finding.CannotTell("No revision is frozen.", "The designer freezes one."));
        }
    }

    /** Makes the rules of a design's checks. */
    record Maker(DesignRows rows, RevisionRows revisions, Designs designs) {
        GateRule rule(String item, String... subjects) {
            return new OfChecks(item, rows, revisions, designs, Arrays.asList(subjects));
        }
    }

    @Bean
    Maker designRuleMaker(DesignRows rows, RevisionRows revisions, Designs designs) {
        return new Maker(rows, revisions, designs);
    }

    @Bean
    GateRule stringsInTheCold(Maker maker) {
        return maker.rule("designed.1", "voltage in the cold");
    }

    @Bean
    GateRule stringsInTheHeat(Maker maker) {
        return maker.rule("designed.2", "voltage in the heat");
    }

    @Bean
    GateRule inputCurrents(Maker maker) {
        return maker.rule("designed.3", "short-circuit current into", "fuses of the strings");
    }

    @Bean
    GateRule conductors(Maker maker) {
        return maker.rule("designed.4", ": terminals", ": in its heat", "small conductor", "Conductors");
    }

    @Bean
    GateRule dropAndRise(Maker maker) {
        return maker.rule("designed.5", ": voltage drop", ": voltage rise", "Voltage at the inverter");
    }

    @Bean
    GateRule devicesGroundAndFill(Maker maker) {
        return maker.rule("designed.6", ": its device", "equipment ground", "conduit fill", "Device of the array");
    }

    @Bean
    GateRule busbarOrTap(Maker maker) {
        return maker.rule("designed.7", "Busbar", "Tap ahead");
    }

    @Bean
    GateRule interruptingRating(Maker maker) {
        return maker.rule("designed.8", "Interrupting rating");
    }

    @Bean
    GateRule disconnectToMeter(Maker maker) {
        return maker.rule("designed.9", "Disconnect to meter");
    }

    @Bean
    GateRule roofRules(Maker maker) {
        return maker.rule("designed.10", "Rapid shutdown", "Arc-fault");
    }

    @Bean
    GateRule structuralLetter(Maker maker) {
        return maker.rule("designed.11", "Wind", "Ground snow", "Frost depth", "Structural letter", "Embedment");
    }

    @Bean
    GateRule buriedRuns(Maker maker) {
        return maker.rule("designed.12", ": cover");
    }

    @Bean
    GateRule freeStrips(Maker maker) {
        return maker.rule("designed.13", "free strip");
    }

    @Bean
    GateRule generatorApart(Maker maker) {
        return maker.rule("designed.20", "Generator and array");
    }

    @Bean
    GateRule frozenRevision(DesignRows rows, RevisionRows revisions, Designs designs) {
        return new Frozen("designed.16", rows, revisions, designs);
    }

    @Bean
    GateRule billOfQuantities(DesignRows rows, RevisionRows revisions, Designs designs) {
        return new Counted("designed.17", rows, revisions, designs);
    }
}
