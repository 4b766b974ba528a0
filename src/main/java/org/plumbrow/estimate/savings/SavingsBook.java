package org.plumbrow.estimate.savings;

import java.math.BigDecimal;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.finance.SavingsRange;
import org.plumbrow.calc.finance.SelfUse;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.estimate.Estimates;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitle;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What a project saves, worked out at each look from its yield, its use, its price and its terms; and the terms changed. */
@Service
@Transactional
public class SavingsBook {

    private final SavingsRows rows;
    private final Estimates estimates;
    private final Projects projects;
    private final ProjectAccess projectAccess;
    private final ProjectTitles titles;
    private final Journal journal;
    private final Access access;
    private final Clock clock;

    SavingsBook(
            SavingsRows rows,
            Estimates estimates,
            Projects projects,
            ProjectAccess projectAccess,
            ProjectTitles titles,
            Journal journal,
            Access access,
            Clock clock) {
        this.rows = rows;
        this.estimates = estimates;
        this.projects = projects;
        this.projectAccess = projectAccess;
        this.titles = titles;
        this.journal = journal;
        this.access = access;
        this.clock = clock;
    }

    /**
     * @param missing in sentences
     * @param noYield whether the yield is among what is missing
     * @param noUse whether the use is
     * @param basis null while something is missing
     */
    record Page(
            ProjectTitle title,
            List<String> missing,
            boolean noYield,
            boolean noUse,
            @Nullable Basis basis) {}

    /**
     * What the page is made from.
     *
     * @param priceUsd of the contract; null where it names none: then 0 was taken, and what hangs on it is not shown
     */
    record Basis(
            SavingsRows.Kept kept,
            EstimateFacts facts,
            SelfUse self,
            @Nullable BigDecimal priceUsd,
            SavingsRange range) {}

    @Transactional(readOnly = true)
    Page page(UUID projectId) {
        projectAccess.require(projectId, May.SEE_MONEY);
        ProjectFacts project = projects.facts(projectId);
        Optional<EstimateFacts> facts = estimates.of(projectId);
        Optional<SelfUse> self = facts.flatMap(known -> estimates.selfUse(projectId));
        boolean noUse = facts.map(known -> known.useKwhPerYear() == null).orElse(false);
        List<String> missing = new ArrayList<>();
        if (facts.isEmpty()) {
            missing.addAll(estimates.missing(projectId));
        }
        if (noUse) {
            missing.add("Use of twelve months is not known. Type it from the bills, or bring the utility’s file.");
        }
        Basis basis = facts.isPresent() && self.isPresent() ? basis(project, facts.get(), self.get()) : null;
        return new Page(titles.of(project), List.copyOf(missing), facts.isEmpty(), noUse, basis);
    }

    private Basis basis(ProjectFacts project, EstimateFacts facts, SelfUse self) {
        SavingsRows.Kept kept = kept(project);
        BigDecimal price = project.contract().priceUsd();
        SavingsRange range = kept.terms()
                .range(
                        facts.kwh(),
                        self.onSiteShare().orElse(0.0),
                        price == null ? 0 : price.doubleValue(),
                        facts.spread());
        return new Basis(kept, facts, self, price, range);
    }

    private SavingsRows.Kept kept(ProjectFacts project) {
        BigDecimal kwDc = project.contract().systemKwDc();
        return rows.terms(project.id())
                .orElseGet(() -> new SavingsRows.Kept(-1, SavingsTerms.usual(kwDc == null ? 0 : kwDc.doubleValue())));
    }

    record Sheet(ProjectTitle title, SavingsRows.Kept kept) {}

    @Transactional(readOnly = true)
    Sheet terms(UUID projectId) {
        mayChange(projectId);
        ProjectFacts project = projects.facts(projectId);
        return new Sheet(titles.of(project), kept(project));
    }

    private UUID mayChange(UUID projectId) {
        projectAccess.require(projectId, May.SEE_MONEY);
        return projectAccess.require(projectId, May.EDIT_PROJECT);
    }

    /**
     * @param version as it was opened; -1 for a project whose terms nobody has written
     * @throws EditedMeanwhile if somebody was faster
     */
    public Optional<Refusal> change(UUID projectId, long version, SavingsTerms terms) {
        UUID branchId = mayChange(projectId);
        SavingsRows.Kept before = kept(projects.factsUnchecked(projectId));
        EditedMeanwhile.check(version, before.version());
        if (!before.isUsual() && before.terms().equals(terms)) {
            return Optional.empty();
        }
        if (!rows.keep(projectId, branchId, version, terms)) {
            throw new EditedMeanwhile(version, version + 1);
        }
        journal.append(
                JournalEvent.of(projectId, "savings.changed", sentence(before, terms)),
                access.actor(),
                clock.instant());
        return Optional.empty();
    }

    /** What was changed, and no figure: the journal is read by people who may not see money. */
    private static String sentence(SavingsRows.Kept before, SavingsTerms terms) {
        if (before.isUsual()) {
            return "Terms of the savings written down.";
        }
        List<Written> was = SavingsForm.of(before).written();
        List<Written> now =
                SavingsForm.of(new SavingsRows.Kept(before.version(), terms)).written();
        Set<String> changed = now.stream()
                .filter(field -> !field.name().startsWith("incentives") && !was.contains(field))
                .map(field -> field.label().split(",")[0])
                .map(label -> Character.toLowerCase(label.charAt(0)) + label.substring(1))
                .collect(Collectors.toCollection(LinkedHashSet::new));
        if (!before.terms().incentives().equals(terms.incentives())) {
            changed.add("incentives");
        }
        return "Terms of the savings changed: " + String.join(", ", changed) + ".";
    }
}
