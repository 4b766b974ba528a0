package org.plumbrow.schedule.plan;

import java.time.Clock;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.engine.Effort;
import org.plumbrow.calc.planning.engine.Watch;
import org.plumbrow.database.BackgroundWork;
import org.plumbrow.database.RunFailed;
import org.plumbrow.database.RunProgress;
import org.plumbrow.schedule.plan.PlanHead.State;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Computes a branch's plan into a draft. One run of a branch at a time, which {@code BackgroundRuns} holds; begun again
 * from the start it gives the same plan.
 */
@Component
class PlanRun implements BackgroundWork {

    static final String KIND = "plan";

    private static final Logger LOG = LoggerFactory.getLogger(PlanRun.class);
    private static final int STEPS = 5;

    /** The plan is the same on any number of them. */
    private static final int MOST_THREADS = 4;

    private final PlanInputs inputs;
    private final PlanRows rows;
    private final PlanWriting writing;
    private final Publishing publishing;
    private final PlanForecasting forecasting;
    private final TransactionTemplate transaction;
    private final Clock clock;

    PlanRun(
            PlanInputs inputs,
            PlanRows rows,
            PlanWriting writing,
            Publishing publishing,
            PlanForecasting forecasting,
            TransactionTemplate transaction,
            Clock clock) {
        this.inputs = inputs;
        this.rows = rows;
        this.writing = writing;
        this.publishing = publishing;
        this.forecasting = forecasting;
        this.transaction = transaction;
        this.clock = clock;
    }

    @Override
    public String kind() {
        return KIND;
    }

    @Override
    public String perform(RunProgress progress) {
        progress.step(0, STEPS, "Reading projects, crews and calendars");
        BranchProblem problem = transaction.execute(status -> inputs.refreshed(progress.branchId()));
        progress.step(
                1,
                STEPS,
                "Placing the activities of %d projects".formatted(problem.jobs().size()));
        if (progress.isStopped()) {
            return "Stopped; the plan is as it was.";
        }
        Optional<PlanForecasting.Known> published = forecasting.published(progress.branchId());
        ComputedPlan computed = computed(progress, problem, published);
        progress.step(2, STEPS, "Playing the plan many times, with other durations, waits and weather");
        PlanForecasting.Made forecasts = forecasting.make(problem, computed, published);
        progress.step(
                STEPS - 1,
                STEPS,
                "Storing %d planned activities"
                        .formatted(computed.plan().placements().size()));
        boolean stopped = progress.isStopped();
        String outcome = transaction.execute(status -> store(progress, computed, forecasts));
        progress.step(STEPS, STEPS, "Done");
        return stopped ? "Search stopped, the best plan so far is kept. " + outcome : outcome;
    }

    private static ComputedPlan computed(
            RunProgress progress, BranchProblem problem, Optional<PlanForecasting.Known> published) {
        try {
            return ComputedPlan.improved(
                    problem,
                    published.map(known -> KnownPlan.published(known.rows(), problem.today())),
                    Effort.background(
                            problem.jobs().size(),
                            Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors())),
                    new Told(progress));
        } catch (ComputedPlan.BrokenPlan broken) {
            LOG.error("The plan of branch {} breaks its own rules: {}", progress.branchId(), broken.getMessage());
            throw new RunFailed("The plan could not be computed: it broke a rule of its own, a fault of ours that is"
                    + " in the log. The last good plan is still shown.");
        }
    }

    /** Tells the page how the search goes; whoever finds that good enough stops it and has the best plan so far. */
    private record Told(RunProgress progress) implements Watch {
        @Override
        public boolean isStopped() {
            return progress.isStopped();
        }

        @Override
        public void progress(String stage, int done, int of, long lateness) {
            progress.step(
                    1,
                    STEPS,
                    "%s; best plan so far: %s"
                            .formatted(
                                    of == 1 ? stage : "%s, %d of %d".formatted(stage, done, of),
                                    lateness == 0 ? "nothing late" : lateness + " half-days late, weighted"));
        }
    }

    private String store(RunProgress progress, ComputedPlan computed, PlanForecasting.Made forecasts) {
        UUID branch = progress.branchId();
        if (rows.in(branch, State.PUBLISHED).isEmpty()
                && computed.plan().placements().isEmpty()
                && isQuiet(computed)) {
            return "There is nothing to plan yet: no project is signed.";
        }
        UUID plan = writing.draft(branch, rows.lastNumber(branch) + 1, computed, progress.askedBy(), clock.instant());
        String outcome = outcome(branch, computed);
        forecasting.store(branch, forecasts, rows.head(plan).map(PlanHead::id));
        return outcome;
    }

    /** Publishes the first draft, throws away one that changes nothing. */
    private String outcome(UUID branch, ComputedPlan computed) {
        PlanHead draft = rows.in(branch, State.DRAFT).orElseThrow();
        Optional<PlanHead> published = rows.in(branch, State.PUBLISHED);
        if (published.isEmpty()) {
            publishing.publishFirst(branch);
            return rows.in(branch, State.DRAFT).isPresent()
                    ? "Draft %d is made; it clashes and cannot be published yet.".formatted(draft.number())
                    : "The first plan of this branch is published.";
        }
        PlanChanges changes =
                PlanChanges.between(publishing.snapshot(published.get()), publishing.snapshot(draft), draft.first());
        if (changes.isNothing() && isQuiet(computed)) {
            if (hasSameMachines(published.get(), draft)) {
                writing.discard(branch);
                return "The published plan stands: no date changes.";
            }
            return "Draft %d is made: no date moves, only machines go elsewhere.".formatted(draft.number());
        }
        return String.format(
                Locale.US,
                "Draft %d is made: %,d dates of %d projects differ from the published plan.",
                draft.number(),
                changes.moves().size() + changes.gone().size(),
                changes.projects().size());
    }

    private boolean hasSameMachines(PlanHead published, PlanHead draft) {
        return places(published, draft.first()).equals(places(draft, draft.first()));
    }

    /** Which machine stays at which activity until when, from that half-day on. */
    private Set<String> places(PlanHead plan, HalfDay from) {
        return rows.machines(plan.id()).stream()
                .filter(booking -> !booking.last().isBefore(from))
                .map(booking -> booking.activityId() + " " + booking.machineId() + " " + booking.last())
                .collect(Collectors.toSet());
    }

    /** A clash is shown even if it moves no date. */
    private static boolean isQuiet(ComputedPlan computed) {
        return computed.findings().stream().noneMatch(PlanFinding::stopsPublishing);
    }
}
