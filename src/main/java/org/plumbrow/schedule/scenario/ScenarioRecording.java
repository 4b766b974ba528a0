package org.plumbrow.schedule.scenario;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.days.WorkedDays;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.crew.AwayReason;
import org.plumbrow.crew.AwayTime;
import org.plumbrow.crew.CrewEditing;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.CrewTerms;
import org.plumbrow.crew.Crews;
import org.plumbrow.crew.EquipmentEditing;
import org.plumbrow.crew.EquipmentTerms;
import org.plumbrow.database.Ids;
import org.plumbrow.schedule.activity.JobActivities;
import org.plumbrow.schedule.activity.Moves;
import org.plumbrow.schedule.plan.BranchProblem;
import org.plumbrow.schedule.plan.BranchVariant;
import org.plumbrow.schedule.plan.BranchVariants;
import org.plumbrow.schedule.plan.PlanEquipment;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Records what is otherwise in an accepted scenario where each belongs: with the crew, the machine, the work, the working
 * days. A job is no project yet and is left where it is.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class ScenarioRecording {

    private final BranchVariants variants;
    private final Crews crews;
    private final CrewEditing crewEditing;
    private final EquipmentEditing machineEditing;
    private final WorkedDays workedDays;
    private final Moves moves;

    ScenarioRecording(
            BranchVariants variants,
            Crews crews,
            CrewEditing crewEditing,
            EquipmentEditing machineEditing,
            WorkedDays workedDays,
            Moves moves) {
        this.variants = variants;
        this.crews = crews;
        this.crewEditing = crewEditing;
        this.machineEditing = machineEditing;
        this.workedDays = workedDays;
        this.moves = moves;
    }

    /** @return what is wrong with the first that cannot be recorded */
    public Optional<Refusal> record(Scenario scenario) {
        BranchProblem branch = variants.branch(scenario.branchId());
        for (Scenario.Change change : scenario.changes()) {
            Optional<Refusal> wrong = record(branch, scenario, change.terms());
            if (wrong.isPresent()) {
                return wrong.map(no -> Refusal.ofForm(no.sentence()));
            }
        }
        return Optional.empty();
    }

    private Optional<Refusal> record(BranchProblem branch, Scenario scenario, ScenarioTerms terms) {
        return switch (terms.kind()) {
            case CREW_AWAY ->
                crewEditing.away(Ids.next(), there(terms.crewId()), time(branch, scenario, terms, AwayReason.OTHER));
            case MACHINE_AWAY ->
                machineEditing.away(
                        Ids.next(), there(terms.machineId()), time(branch, scenario, terms, AwayReason.REPAIR));
            case CREW_MORE -> crewEditing.add(Ids.next(), scenario.branchId(), crew(terms));
            case MACHINE_MORE -> machineEditing.add(Ids.next(), scenario.branchId(), machine(branch, terms));
            case WORK_GIVEN -> give(branch, scenario, terms);
            case SATURDAYS ->
                workedDays.work(
                        scenario.branchId(),
                        BranchVariant.saturdays(branch, there(terms.firstDay()), there(terms.days())),
                        scenario.name());
            case NEW_JOB -> Optional.empty();
        };
    }

    private static AwayTime time(BranchProblem branch, Scenario scenario, ScenarioTerms terms, AwayReason reason) {
        LocalDate first = there(terms.firstDay());
        return new AwayTime(
                first,
                Half.MORNING,
                BranchVariant.lastOf(branch, first, there(terms.days())),
                Half.AFTERNOON,
                reason,
                scenario.name());
    }

    private CrewTerms crew(ScenarioTerms terms) {
        CrewFacts like = crews.crew(there(terms.crewId())).orElseThrow(NotFound::new);
        return new CrewTerms(
                terms.name(),
                like.size(),
                like.electricalPeople().orElse(null),
                like.skills(),
                null,
                there(terms.firstDay()),
                null);
    }

    private static EquipmentTerms machine(BranchProblem branch, ScenarioTerms terms) {
        PlanEquipment like = branch.equipment().stream()
                .filter(one -> one.id().equals(terms.machineId()))
                .findFirst()
                .orElseThrow(NotFound::new);
        return new EquipmentTerms(like.kind(), terms.name(), there(terms.firstDay()), null);
    }

    private Optional<Refusal> give(BranchProblem branch, Scenario scenario, ScenarioTerms terms) {
        UUID activity = there(terms.activityId());
        Optional<Long> version = branch.jobs().stream()
                .flatMap(job -> job.items().stream())
                .map(JobActivities.Item::row)
                .filter(row -> row.id().equals(activity))
                .map(row -> row.version())
                .findFirst();
        return version.isEmpty()
                ? Optional.of(Refusal.ofForm(
                        "A work that is given to another crew is no longer in the plan. Take it out here."))
                : moves.settle(
                        activity,
                        new Moves.Seen(version.get(), moves.lastNumber(scenario.branchId())),
                        ScenarioVariants.pin(terms, scenario.name()));
    }

    private static <T> T there(@org.jspecify.annotations.Nullable T value) {
        return Objects.requireNonNull(value);
    }
}
