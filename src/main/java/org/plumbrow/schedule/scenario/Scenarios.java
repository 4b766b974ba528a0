package org.plumbrow.schedule.scenario;

import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.schedule.activity.JobActivities;
import org.plumbrow.schedule.plan.BranchProblem;
import org.plumbrow.schedule.plan.BranchVariant;
import org.plumbrow.schedule.plan.BranchVariants;
import org.plumbrow.schedule.plan.BranchVariants.Outcome;
import org.plumbrow.schedule.plan.PlanCrew;
import org.plumbrow.schedule.plan.PlanEquipment;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.ThoughtJob;
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
    private final BranchVariants variants;
    private final Clock clock;

    Scenarios(Access access, ScenarioRows rows, BranchVariants variants, Clock clock) {
        this.access = access;
        this.rows = rows;
        this.variants = variants;
        this.clock = clock;
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

    ScenarioChoices choices() {
        return choices(variants.branch(access.require(May.CHANGE_PLAN).id()));
    }

    private static ScenarioChoices choices(BranchProblem branch) {
        Map<UUID, String> crews = new LinkedHashMap<>();
        branch.crews().forEach((PlanCrew crew) -> crews.put(crew.id(), crew.name()));
        Map<UUID, String> machines = new LinkedHashMap<>();
        branch.equipment().forEach((PlanEquipment machine) -> machines.put(machine.id(), machine.name()));
        return new ScenarioChoices(crews, machines);
    }

    private Shown shown(UUID branchId, List<Scenario> scenarios) {
        BranchProblem now = variants.branch(branchId);
        ScenarioChoices choices = choices(now);
        List<Outcome> outcomes =
                variants.outcomes(now, scenarios.stream().map(this::change).toList());
        Map<UUID, String> projects = now.jobs().stream()
                .map(JobActivities::project)
                .collect(Collectors.toMap(ProjectFacts::id, ProjectFacts::name));
        HalfDay until = HalfDay.afternoon(now.today().date().plusWeeks(WEEKS));
        List<ScenarioView> compared = new ArrayList<>();
        compared.add(view("As it stands", "", "", outcomes.get(0), choices, projects, until));
        for (int at = 0; at < scenarios.size(); at++) {
            Scenario one = scenarios.get(at);
            compared.add(view(
                    one.terms().name(),
                    one.terms().words(choices),
                    "/look-ahead/scenarios/" + one.id(),
                    outcomes.get(at + 1),
                    choices,
                    projects,
                    until));
        }
        return new Shown(scenarios, compared, choices);
    }

    private UnaryOperator<BranchProblem> change(Scenario scenario) {
        ScenarioTerms terms = scenario.terms();
        return switch (terms.kind()) {
            case CREW_AWAY ->
                branch -> new BranchVariant(branch).crewAway(terms.crewId(), terms.firstDay(), terms.days());
            case CREW_MORE ->
                branch -> new BranchVariant(branch)
                        .crewLike(terms.crewId(), scenario.id(), "the new crew", terms.firstDay());
            case MACHINE_AWAY ->
                branch -> new BranchVariant(branch).machineAway(terms.machineId(), terms.firstDay(), terms.days());
            case NEW_JOB -> {
                JobActivities job = variants.job(new ThoughtJob(terms.mounting(), terms.kwDc(), null, null, null)
                        .of(scenario.id(), scenario.branchId(), clock.instant()));
                yield branch -> new BranchVariant(branch).withJob(job);
            }
        };
    }

    private static ScenarioView view(
            String name,
            String what,
            String href,
            Outcome outcome,
            ScenarioChoices choices,
            Map<UUID, String> projects,
            HalfDay until) {
        Set<UUID> moved = outcome.changes().moves().stream()
                .filter(move -> !move.now().start().isAfter(until)
                        || move.was().filter(was -> !was.start().isAfter(until)).isPresent())
                .map(move -> move.projectId())
                .collect(Collectors.toSet());
        return new ScenarioView(
                name,
                what,
                href,
                outcome.kept(),
                outcome.broken(),
                outcome.halfDaysLate(),
                moved.size(),
                outcome.changes().breaking().stream()
                        .map(promise -> breaks(promise, projects))
                        .sorted()
                        .toList(),
                names(outcome.changes().crewsToTell(until), choices.crews()),
                names(outcome.changes().customersToTell(), projects));
    }

    private static String breaks(PlannedPromise promise, Map<UUID, String> projects) {
        String late = promise.finish().isEmpty()
                ? "no date"
                : promise.daysLate() == 1 ? "1 working day late" : promise.daysLate() + " working days late";
        return projects.getOrDefault(promise.projectId(), "") + ", " + late;
    }

    private static List<String> names(Collection<UUID> ids, Map<UUID, String> known) {
        return ids.stream().filter(known::containsKey).map(known::get).sorted().toList();
    }
}
