package org.plumbrow.schedule.scenario;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.schedule.activity.JobActivities;
import org.plumbrow.schedule.activity.Pin;
import org.plumbrow.schedule.plan.BranchProblem;
import org.plumbrow.schedule.plan.BranchVariant;
import org.plumbrow.schedule.plan.BranchVariants;
import org.plumbrow.schedule.plan.ThoughtJob;
import org.springframework.stereotype.Component;

/** What a scenario makes of the branch: all that is otherwise, one after another. */
@Component
class ScenarioVariants {

    private final BranchVariants variants;
    private final Clock clock;

    ScenarioVariants(BranchVariants variants, Clock clock) {
        this.variants = variants;
        this.clock = clock;
    }

    /** New jobs come behind those that there are. */
    UnaryOperator<BranchProblem> of(Scenario scenario) {
        return branch -> {
            BranchProblem then = branch;
            for (Scenario.Change change : scenario.changes()) {
                then = changed(then, change.id(), change.terms());
            }
            return then;
        };
    }

    private BranchProblem changed(BranchProblem branch, UUID id, ScenarioTerms terms) {
        BranchVariant variant = new BranchVariant(branch);
        LocalDate first = terms.firstDay() == null ? branch.today().date() : terms.firstDay();
        int days = terms.days() == null ? 0 : terms.days();
        return switch (terms.kind()) {
            case CREW_AWAY -> variant.crewAway(there(terms.crewId()), first, days);
            case CREW_MORE -> variant.crewLike(there(terms.crewId()), id, terms.name(), first);
            case MACHINE_AWAY -> variant.machineAway(there(terms.machineId()), first, days);
            case MACHINE_MORE -> variant.machineLike(there(terms.machineId()), id, terms.name(), first);
            case SATURDAYS -> variant.onSaturdays(first, days);
            case WORK_GIVEN -> branch.fixing(there(terms.activityId()), pin(terms, ""));
            case NEW_JOB -> variant.withJob(job(branch, id, terms));
        };
    }

    /** The start that is settled when a work goes to another crew. */
    static Pin pin(ScenarioTerms terms, String reason) {
        return new Pin(HalfDay.morning(there(terms.firstDay())), Optional.ofNullable(terms.crewId()), reason);
    }

    private JobActivities job(BranchProblem branch, UUID id, ScenarioTerms terms) {
        return variants.job(new ThoughtJob(there(terms.mounting()), there(terms.kwDc()), null, null, null)
                .of(id, branch.settings().branch().id(), clock.instant()));
    }

    /** Its kind needs it, so the form and the database have seen to it. */
    private static <T> T there(@org.jspecify.annotations.Nullable T value) {
        return Objects.requireNonNull(value);
    }
}
