package org.plumbrow.calc.planning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The first engine: one pass over all activities, the most urgent first, each to the first place where its crew and
 * equipment are free. Fast, deterministic, never better than it has to be: it looks for no other order.
 *
 * <p>An activity is not interrupted except over days off and over the absence of its own crew, which it may span; its
 * equipment stays with it meanwhile.
 */
public final class SerialPlanner {

    private SerialPlanner() {}

    public static Plan plan(PlanningProblem problem) {
        return plan(problem, Guidance.NONE);
    }

    /** The same pass in another order, with other crews, or with dates held back: what a search has found. */
    public static Plan plan(PlanningProblem problem, Guidance guidance) {
        Board board = new Board(problem);
        Placing placing = new Placing(board);
        new FixedPlacing(placing).placeAll();
        new FreePlacing(placing, guidance).placeAll();
        new JustInTimeWaits(board).moveAll();
        new PinnedPlacing(placing).findBrokenOrder();
        return asPlan(board);
    }

    private static Plan asPlan(Board board) {
        Map<String, Placement> placements = new LinkedHashMap<>();
        for (Placement placement : board.placed) {
            if (placement != null) {
                placements.put(placement.activityId(), placement);
            }
        }
        List<PromiseOutcome> promises = board.problem.promises().stream()
                .map(promise -> outcome(promise, placements, board.time))
                .toList();
        return new Plan(placements, promises, board.findings);
    }

    private static PromiseOutcome outcome(Promise promise, Map<String, Placement> placements, TimeLine time) {
        Optional<Placement> last = Optional.empty();
        for (String id : promise.activityIds()) {
            Placement placement = placements.get(id);
            if (placement == null) {
                return new PromiseOutcome(promise, Optional.empty(), 0, 0, Optional.of(id));
            }
            if (last.isEmpty() || placement.finish().isAfter(last.get().finish())) {
                last = Optional.of(placement);
            }
        }
        Placement binding = last.orElseThrow();
        int spare = Priorities.dueSlot(time, promise.date()) - time.axis.atOrBefore(binding.finish());
        boolean late = binding.finish().date().isAfter(promise.date());
        return new PromiseOutcome(
                promise,
                Optional.of(binding.finish()),
                late ? Math.max(1, -spare) : 0,
                late ? 0 : Math.max(0, spare),
                Optional.of(binding.activityId()));
    }
}
