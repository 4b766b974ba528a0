package org.plumbrow.calc.planning.replan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Promise;
import org.plumbrow.calc.planning.PromiseOutcome;
import org.plumbrow.calc.planning.Published;
import org.plumbrow.calc.planning.SerialPlanner;
import org.plumbrow.calc.planning.bounds.ChainBound;
import org.plumbrow.calc.planning.engine.Effort;
import org.plumbrow.calc.planning.engine.Planner;
import org.plumbrow.calc.planning.engine.Watch;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Due;

/**
 * Asks of one promise whether it can be kept. That it cannot is proved by its chain alone; that it can is shown by a plan that
 * serves its project first. That others must break for it is proved only where a branch of these few projects alone, with
 * all crews, has no plan that keeps all: leaving the other projects out only makes that easier.
 */
public final class PromiseProbe {

    /** More projects together are not given to the solver: a page waits for it. */
    private static final int MOST_TOGETHER = 6;

    /** Of the proof: some tenths of a second. */
    private static final Effort PROOF = new Effort(1, 300, 0, 60, 0.3, 1);

    private final PlanningProblem problem;
    private final Published published;
    private final Plan now;

    private PromiseProbe(PlanningProblem problem, Published published) {
        this.problem = problem;
        this.published = published;
        now = LeastChange.plan(problem, published);
    }

    /** @return empty where the problem has no such promise, or the plan gives it no date */
    public static Optional<Prospect> of(PlanningProblem problem, Published published, String projectId) {
        PromiseProbe probe = new PromiseProbe(problem, published);
        return probe.now.promises().stream()
                .filter(outcome -> outcome.promise().projectId().equals(projectId)
                        && outcome.finish().isPresent())
                .max(Comparator.comparingInt(PromiseOutcome::halfDaysLate))
                .map(probe::prospect);
    }

    private Prospect prospect(PromiseOutcome outcome) {
        Promise promise = outcome.promise();
        if (outcome.holds()) {
            return new Prospect(promise, Prospect.Kind.KEPT, outcome.halfDaysSpare(), List.of(), false, 0);
        }
        int alone = lateAlone(promise);
        return alone > 0 ? new Prospect(promise, Prospect.Kind.NEVER, alone, List.of(), false, 0) : tried(promise);
    }

    private int lateAlone(Promise promise) {
        BranchModel model = BranchModel.of(problem, SerialPlanner.plan(problem), Optional.empty());
        ChainBound chains = new ChainBound(model);
        int late = 0;
        for (Due due : model.dues) {
            late = due.promise.equals(promise) ? Math.max(late, chains.late(due)) : late;
        }
        return late;
    }

    private Prospect tried(Promise promise) {
        Plan plan = LeastChange.favouring(problem, published, promise.projectId());
        boolean kept =
                plan.promises().stream().anyMatch(outcome -> outcome.promise().equals(promise) && outcome.holds());
        if (!kept) {
            return new Prospect(promise, Prospect.Kind.NOT_FOUND, 0, List.of(), false, 0);
        }
        List<Prospect.Breaking> breaking = breaking(plan);
        return new Prospect(
                promise,
                breaking.isEmpty() ? Prospect.Kind.FREELY : Prospect.Kind.AT_A_PRICE,
                0,
                breaking,
                areApart(promise, breaking),
                moved(plan));
    }

    private List<Prospect.Breaking> breaking(Plan plan) {
        List<Prospect.Breaking> breaking = new ArrayList<>();
        for (int at = 0; at < plan.promises().size(); at++) {
            PromiseOutcome then = plan.promises().get(at);
            int was = now.promises().get(at).halfDaysLate();
            if (then.halfDaysLate() > was) {
                breaking.add(new Prospect.Breaking(then.promise(), then.halfDaysLate(), was));
            }
        }
        breaking.sort(Comparator.<Prospect.Breaking>comparingInt(one -> Math.min(1, one.was()))
                .thenComparing(one -> was(one) - one.halfDaysLate()));
        return breaking;
    }

    private static int was(Prospect.Breaking one) {
        return one.was();
    }

    private int moved(Plan plan) {
        int moved = 0;
        for (Placement then : plan.placements().values()) {
            Optional<Placement> was = now.of(then.activityId());
            moved += was.filter(place -> place.start().equals(then.start())
                                    && place.crewId().equals(then.crewId()))
                            .isPresent()
                    ? 0
                    : 1;
        }
        return moved;
    }

    /** Whether no plan keeps this promise with all that held before and break in the plan found; false where not known. */
    private boolean areApart(Promise promise, List<Prospect.Breaking> breaking) {
        List<Promise> together = new ArrayList<>(List.of(promise));
        breaking.stream()
                .filter(one -> one.was() == 0)
                .map(Prospect.Breaking::promise)
                .forEach(together::add);
        if (together.size() < 2 || together.size() > MOST_TOGETHER) {
            return false;
        }
        return Planner.plan(alone(together), Optional.empty(), PROOF, Watch.NOBODY)
                        .lowerBound()
                > 0;
    }

    /** The branch with these promises only: what they wait for, and what is settled for anybody. */
    private PlanningProblem alone(List<Promise> promises) {
        Stream<String> settled = problem.activities().stream()
                .filter(activity -> !(activity.fix() instanceof Fix.Free))
                .map(Activity::id);
        Stream<String> promised = promises.stream().flatMap(promise -> promise.activityIds().stream());
        return problem.narrowedTo(Stream.concat(promised, settled).toList(), promises);
    }
}
