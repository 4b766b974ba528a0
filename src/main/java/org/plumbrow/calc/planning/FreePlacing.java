package org.plumbrow.calc.planning;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.stream.IntStream;

/**
 * Serial schedule generation: of the activities whose predecessors have their dates, the one that has to start first
 * takes the first place that is free. Equals are served by weight, then in the problem's order, so that the same
 * problem always gives the same plan.
 */
final class FreePlacing {

    private final Board board;
    private final Placing placing;
    private final Guidance guidance;

    FreePlacing(Placing placing, Guidance guidance) {
        this.placing = placing;
        this.guidance = guidance;
        this.board = placing.board;
    }

    void placeAll() {
        sayCircles();
        Priorities priorities = new Priorities(board);
        int[] rank = board.network.activities.stream()
                .mapToInt(activity -> guidance.rank(activity.id()))
                .toArray();
        Comparator<Integer> urgency = Comparator.<Integer>comparingInt(number -> rank[number])
                .thenComparing(number -> priorities.latestStart[number])
                .thenComparing(number -> -priorities.weight[number])
                .thenComparing(Comparator.naturalOrder());
        PriorityQueue<Integer> ready = new PriorityQueue<>(urgency);
        int[] open = board.network.openPredecessors();
        int[] first = IntStream.range(0, open.length)
                .filter(number -> open[number] == 0)
                .toArray();
        for (int number : first) {
            if (board.network.isFree(number)) {
                ready.add(number);
            } else {
                freeSuccessors(number, open, ready);
            }
        }
        while (!ready.isEmpty()) {
            int number = ready.remove();
            place(number);
            freeSuccessors(number, open, ready);
        }
    }

    private void freeSuccessors(int number, int[] open, PriorityQueue<Integer> ready) {
        for (int next : board.network.successors[number]) {
            if (board.network.isFree(next) && --open[next] == 0) {
                ready.add(next);
            }
        }
    }

    private void place(int number) {
        for (int before : board.network.predecessors[number]) {
            if (board.unplanned[before]) {
                block(number, before);
                return;
            }
        }
        Readiness ready = Readiness.of(number, board)
                .notBefore(guidance.notBefore(board.activity(number).id()), board);
        Work work = board.activity(number).work();
        if (work instanceof Work.Waiting wait) {
            placing.waiting(number, wait, ready);
        } else if (work instanceof Work.AtDesk desk) {
            placing.atDesk(number, desk.halfDays(), ready);
        } else {
            placing.byFirstCrew(number, crews(number), crew -> placing.choice.halfDays(number, crew), ready);
        }
    }

    /** The crew that the guidance names, if it may; else all that may. */
    private List<Integer> crews(int number) {
        List<Integer> possible = placing.choice.of(number);
        return guidance.crew(board.activity(number).id())
                .map(board.crewNumbers::get)
                .filter(possible::contains)
                .map(List::of)
                .orElse(possible);
    }

    private void block(int number, int before) {
        board.find(
                number,
                Finding.Kind.BLOCKED,
                "%s has no date because %s, which comes first, has none."
                        .formatted(board.name(number), board.name(before)));
    }

    private void sayCircles() {
        for (List<Integer> circle : board.network.circles()) {
            String names = String.join(" → ", circle.stream().map(board::name).toList());
            circle.forEach(number -> board.find(
                    number,
                    Finding.Kind.CIRCLE,
                    "%s wait for one another in a circle: none can be first. Take one of these links out."
                            .formatted(names)));
        }
        for (int number = 0; number < board.placed.length; number++) {
            if (!board.network.isOrdered(number) && !board.unplanned[number]) {
                block(number, board.network.unorderedPredecessor(number));
            }
        }
    }
}
