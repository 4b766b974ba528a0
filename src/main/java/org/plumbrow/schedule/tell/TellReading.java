package org.plumbrow.schedule.tell;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.plan.PlanChanges;
import org.plumbrow.schedule.plan.PlanHead;
import org.plumbrow.schedule.plan.Plans;
import org.plumbrow.schedule.plan.StoredPlan;
import org.plumbrow.schedule.plan.Telling;
import org.plumbrow.schedule.plan.ToTell;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads whom the published plan concerns, in a number of queries that does not grow with the branch. */
@Service
@Transactional(readOnly = true)
class TellReading {

    /** Crews are told of what changes within so many weeks; what is later moves again before it matters. */
    private static final int WEEKS_TOLD = 2;

    private final Plans plans;
    private final Projects projects;
    private final Crews crews;
    private final BranchSettings settings;
    private final ToldRows told;
    private final Access access;

    TellReading(Plans plans, Projects projects, Crews crews, BranchSettings settings, ToldRows told, Access access) {
        this.plans = plans;
        this.projects = projects;
        this.crews = crews;
        this.settings = settings;
        this.told = told;
        this.access = access;
    }

    /** Empty as long as nothing is published. */
    Optional<TellView> view() {
        UUID branchId = access.require(May.PUBLISH_PLAN).id();
        return plans.published(branchId).map(plan -> view(branchId, plan, plans.publishedBefore(branchId)));
    }

    private TellView view(UUID branchId, StoredPlan plan, Optional<StoredPlan> before) {
        Map<ToldRows.Key, TellView.Told> known = told.of(plan.head().id());
        return new TellView(
                plan.head(),
                before.map(old -> old.head().number()).orElse(0),
                before.map(old -> whom(branchId, plan.head(), plans.changes(old, plan))).orElse(List.of()).stream()
                        .map(who ->
                                new TellView.Line(who, href(who), Optional.ofNullable(known.get(ToldRows.Key.of(who)))))
                        .toList());
    }

    private List<ToTell> whom(UUID branchId, PlanHead plan, PlanChanges changes) {
        return new Telling(
                        plan.first(),
                        HalfDay.afternoon(plan.first().date().plusWeeks(WEEKS_TOLD)),
                        projects.factsUnchecked(changes.projects()).stream()
                                .collect(Collectors.toMap(ProjectFacts::id, project -> project)),
                        crews.crews(branchId, plan.first().date()).stream()
                                .collect(Collectors.toMap(CrewFacts::id, CrewFacts::name)),
                        settings.utilities(branchId).stream()
                                .collect(Collectors.toMap(UtilityFacts::id, UtilityFacts::name)))
                .of(changes);
    }

    private static String href(ToTell who) {
        return switch (who.whom()) {
            case CREW -> "/crews/" + who.id() + "/week";
            case CUSTOMER -> "/projects/" + who.id();
            case UTILITY -> "/cutovers";
        };
    }
}
