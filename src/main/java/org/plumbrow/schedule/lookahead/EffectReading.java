package org.plumbrow.schedule.lookahead;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.plan.MovedProject;
import org.plumbrow.schedule.plan.PlanChanges;
import org.plumbrow.schedule.plan.PlanFinding;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.Plans;
import org.plumbrow.schedule.plan.StoredPlan;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Says in numbers and names what publishing the branch's draft would do. */
@Service
@Transactional(readOnly = true)
class EffectReading {

    /** Crews are told of what changes within so many weeks; what is later moves again before it matters. */
    private static final int WEEKS_TOLD = 2;

    private final Plans plans;
    private final Projects projects;
    private final Crews crews;
    private final Access access;

    EffectReading(Plans plans, Projects projects, Crews crews, Access access) {
        this.plans = plans;
        this.projects = projects;
        this.crews = crews;
        this.access = access;
    }

    /** Empty without a draft. */
    Optional<Effect> ofDraft() {
        BranchCard branch = access.require(May.PUBLISH_PLAN);
        Optional<StoredPlan> published = plans.published(branch.id());
        return plans.draft(branch.id()).map(draft -> of(branch.id(), published, draft));
    }

    private Effect of(UUID branchId, Optional<StoredPlan> published, StoredPlan draft) {
        StoredPlan before = published.orElse(new StoredPlan(draft.head(), List.of(), List.of(), List.of(), List.of()));
        PlanChanges changes = plans.changes(before, draft);
        Set<UUID> named = new java.util.HashSet<>(changes.projects());
        changes.breaking().forEach(promise -> named.add(promise.projectId()));
        changes.mended().forEach(promise -> named.add(promise.projectId()));
        Map<UUID, ProjectFacts> facts =
                projects.factsUnchecked(named).stream().collect(Collectors.toMap(ProjectFacts::id, project -> project));
        return new Effect(
                draft.head(),
                EffectWords.inShort(changes),
                MovedProject.in(changes, facts),
                changes.breaking().stream()
                        .map(promise -> broken(promise, facts))
                        .toList(),
                names(changes.customersToTell(draft.head().first()), facts),
                crewNames(branchId, changes, draft),
                draft.findings().stream()
                        .filter(PlanFinding::stopsPublishing)
                        .map(PlanFinding::sentence)
                        .toList());
    }

    private static String broken(PlannedPromise promise, Map<UUID, ProjectFacts> facts) {
        String name = facts.containsKey(promise.projectId())
                ? facts.get(promise.projectId()).name()
                : "A project";
        return "%s, promised %s, breaks by %s"
                .formatted(name, DayWords.of(promise.promisedOn()), LookAheadWords.workingDays(2 * promise.daysLate()));
    }

    private static List<String> names(Set<UUID> projects, Map<UUID, ProjectFacts> facts) {
        return projects.stream()
                .filter(facts::containsKey)
                .map(id -> facts.get(id).name())
                .sorted()
                .toList();
    }

    private List<String> crewNames(UUID branchId, PlanChanges changes, StoredPlan draft) {
        LocalDate until = draft.head().first().date().plusWeeks(WEEKS_TOLD);
        Set<UUID> told = changes.crewsToTell(HalfDay.afternoon(until));
        return crews.crews(branchId, until).stream()
                .filter(crew -> told.contains(crew.id()))
                .map(CrewFacts::name)
                .toList();
    }
}
