package org.plumbrow.schedule.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Breach;
import org.plumbrow.calc.planning.Finding;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanCheck;
import org.plumbrow.calc.planning.PlanWords;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.PromiseOutcome;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.engine.Effort;
import org.plumbrow.calc.planning.engine.Planned;
import org.plumbrow.calc.planning.engine.Watch;
import org.plumbrow.calc.planning.replan.Draft;
import org.plumbrow.calc.planning.replan.LeastChange;
import org.plumbrow.schedule.activity.ActivityRow;
import org.plumbrow.schedule.activity.JobActivities;

/**
 * A plan with what it was made from and what was found on the way, checked.
 *
 * @param proved about all other plans; empty for a plan that was made at once
 * @param findings of the plan, and projects that cannot be planned at all
 */
public record ComputedPlan(
        PlanningProblem problem,
        Plan plan,
        Optional<ProvedBound> proved,
        List<MachineBooking> machines,
        List<PlanFinding> findings) {

    private static final Set<Finding.Kind> CLASHES =
            EnumSet.of(Finding.Kind.BOOKED_TWICE, Finding.Kind.EQUIPMENT_SHORT);

    /**
     * Computes the plan and holds it against its problem.
     *
     * @throws BrokenPlan if it breaks a rule that no finding explains: a fault of the engine, never stored
     */
    public static ComputedPlan of(BranchProblem branch) {
        PlanningProblem problem = branch.toCore();
        return held(branch, problem, SerialPlanner.plan(problem), Optional.empty());
    }

    /**
     * As {@link #of}, with all the work a plan may take; it moves as little as it can of what people know.
     *
     * @param published empty before the first plan
     * @param watch told how far it is; when it says stop, the best plan so far is the answer
     */
    static ComputedPlan improved(BranchProblem branch, Optional<Published> published, Effort effort, Watch watch) {
        PlanningProblem problem = branch.toCore();
        Planned planned = Draft.of(problem, published, effort, watch);
        return held(branch, problem, planned.plan(), Optional.of(ProvedBound.of(planned)));
    }

    /** As {@link #of}, with what people know kept as far as it can be. @param planner {@link #leastChange}, or what it gave before */
    static ComputedPlan keeping(BranchProblem branch, Function<PlanningProblem, Plan> planner) {
        PlanningProblem problem = branch.toCore();
        return held(branch, problem, planner.apply(problem), Optional.empty());
    }

    /** At once, without a search. */
    static Plan leastChange(PlanningProblem problem, List<PlannedRow> published, HalfDay today) {
        return LeastChange.plan(problem, KnownPlan.published(published, today));
    }

    private static ComputedPlan held(
            BranchProblem branch, PlanningProblem problem, Plan plan, Optional<ProvedBound> proved) {
        Set<String> explained =
                plan.findings().stream().map(Finding::activityId).collect(Collectors.toSet());
        List<Breach> unexplained = PlanCheck.breaches(problem, plan).stream()
                .filter(breach -> !explained.contains(breach.activityId())
                        && breach.otherId().filter(explained::contains).isEmpty())
                .toList();
        if (!unexplained.isEmpty()) {
            throw new BrokenPlan(unexplained);
        }
        return new ComputedPlan(
                problem, plan, proved, MachineChoice.of(problem, plan, branch.equipment()), findings(branch, plan));
    }

    /** Says whether another plan was made from the same; only a plan that is stored asks for it. */
    String fingerprint() {
        return PlanFingerprint.of(problem);
    }

    /** As a stored plan would be read, for comparing it with another one. */
    PlanChanges.Snapshot snapshot(BranchProblem branch) {
        PlanWords words = new PlanWords(problem);
        List<PlannedRow> rows = new ArrayList<>();
        for (JobActivities job : branch.jobs()) {
            for (JobActivities.Item item : job.items()) {
                plan.of(item.row().id().toString())
                        .map(placement -> row(item.row(), placement, words))
                        .ifPresent(rows::add);
            }
        }
        return new PlanChanges.Snapshot(
                rows, plan.promises().stream().map(ComputedPlan::promise).toList());
    }

    private static PlannedRow row(ActivityRow row, Placement placement, PlanWords words) {
        return new PlannedRow(
                row.id(),
                row.projectId(),
                row.key(),
                row.code(),
                row.words(),
                row.position(),
                row.equipment(),
                row.isDone(),
                row.pin().isPresent(),
                placement.start(),
                placement.finish(),
                placement.crewId().map(UUID::fromString),
                PlanWriting.kind(placement.bound()),
                PlanWriting.activityOf(placement.bound()).map(UUID::fromString),
                words.bound(placement.bound()));
    }

    private static PlannedPromise promise(PromiseOutcome outcome) {
        return new PlannedPromise(
                UUID.fromString(outcome.promise().projectId()),
                outcome.promise().milestone(),
                outcome.promise().date(),
                outcome.finish(),
                outcome.halfDaysLate(),
                outcome.halfDaysSpare(),
                outcome.bindingActivityId().map(UUID::fromString),
                Optional.empty());
    }

    /** A plan that breaks a rule of its own. */
    public static final class BrokenPlan extends RuntimeException {
        BrokenPlan(List<Breach> breaches) {
            super(breaches.stream().map(Breach::sentence).collect(Collectors.joining(" ")));
        }
    }

    private static List<PlanFinding> findings(BranchProblem branch, Plan plan) {
        List<PlanFinding> findings = new ArrayList<>();
        for (Finding finding : plan.findings()) {
            findings.add(new PlanFinding(
                    finding.kind().name(),
                    Optional.of(UUID.fromString(finding.activityId())),
                    CLASHES.contains(finding.kind()),
                    finding.sentence()));
        }
        branch.jobs().stream()
                .filter(job -> job.items().isEmpty())
                .map(job -> new PlanFinding(
                        "NO_ARRAY",
                        Optional.empty(),
                        false,
                        "%s is not in the plan: its contract names no array. Add the array with its mounting and size."
                                .formatted(job.project().name())))
                .forEach(findings::add);
        return findings;
    }
}
