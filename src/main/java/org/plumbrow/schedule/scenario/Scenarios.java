package org.plumbrow.schedule.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.schedule.activity.JobActivities;
import org.plumbrow.schedule.plan.BranchProblem;
import org.plumbrow.schedule.plan.BranchVariants;
import org.plumbrow.schedule.plan.BranchVariants.Outcome;
import org.plumbrow.schedule.plan.PlannedRow;
import org.plumbrow.schedule.plan.Plans;
import org.plumbrow.schedule.plan.StoredPlan;
import org.plumbrow.schedule.plan.Telling;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads the scenarios of a branch, and plans each. */
@Service
@Transactional(readOnly = true)
class Scenarios {

    private static final int WEEKS = 8;

    private final Access access;
    private final ScenarioRows rows;
    private final ScenarioVariants otherwise;
    private final BranchVariants variants;
    private final Plans plans;

    Scenarios(Access access, ScenarioRows rows, ScenarioVariants otherwise, BranchVariants variants, Plans plans) {
        this.access = access;
        this.rows = rows;
        this.otherwise = otherwise;
        this.variants = variants;
        this.plans = plans;
    }

    /** @param compared the plan as it stands first */
    record Shown(List<Scenario> scenarios, List<ScenarioView> compared, ScenarioChoices choices) {}

    Shown all() {
        UUID branchId = access.require(May.CHANGE_PLAN).id();
        return shown(branchId, rows.of(branchId));
    }

    /** One scenario beside the plan. @throws NotFound if it is not there */
    Shown of(UUID scenarioId) {
        Scenario scenario = scenario(scenarioId);
        return shown(scenario.branchId(), List.of(scenario));
    }

    Scenario scenario(UUID scenarioId) {
        Scenario scenario = rows.find(scenarioId).orElseThrow(NotFound::new);
        access.require(scenario.branchId(), May.CHANGE_PLAN);
        return scenario;
    }

    /** What can be chosen; of the works those that the published plan begins within eight weeks, by project. */
    ScenarioChoices choices(UUID branchId) {
        BranchProblem branch = variants.branch(branchId);
        ScenarioChoices all = ScenarioChoices.of(branch);
        HalfDay until = HalfDay.afternoon(branch.today().date().plusWeeks(WEEKS));
        Map<UUID, PlannedRow> placed =
                plans.published(branchId).map(StoredPlan::byActivity).orElse(Map.of());
        return all.withWorks(id -> Optional.ofNullable(placed.get(id))
                .map(PlannedRow::start)
                .filter(start -> !start.isBefore(branch.today()) && !start.isAfter(until))
                .isPresent());
    }

    private Shown shown(UUID branchId, List<Scenario> scenarios) {
        BranchProblem now = variants.branch(branchId);
        ScenarioChoices choices = ScenarioChoices.of(now);
        List<UnaryOperator<BranchProblem>> changes =
                scenarios.stream().map(otherwise::of).toList();
        List<Outcome> outcomes = variants.outcomes(now, changes);
        ScenarioLines lines = new ScenarioLines(telling(now, choices));
        List<ScenarioView> compared = new ArrayList<>();
        compared.add(lines.of("As it stands", List.of(), "", outcomes.get(0)));
        for (int at = 0; at < scenarios.size(); at++) {
            Scenario one = scenarios.get(at);
            compared.add(lines.of(
                    one.name(),
                    one.changes().stream()
                            .map(change -> change.terms().words(choices))
                            .toList(),
                    "/look-ahead/scenarios/" + one.id(),
                    outcomes.get(at + 1)));
        }
        return new Shown(scenarios, compared, choices);
    }

    private static Telling telling(BranchProblem now, ScenarioChoices choices) {
        return new Telling(
                now.today(),
                HalfDay.afternoon(now.today().date().plusWeeks(WEEKS)),
                now.jobs().stream()
                        .map(JobActivities::project)
                        .collect(Collectors.toMap(ProjectFacts::id, project -> project)),
                choices.crews(),
                now.settings().utilities().stream().collect(Collectors.toMap(UtilityFacts::id, UtilityFacts::name)));
    }
}
