package org.plumbrow.calc.planning;

import java.util.List;
import java.util.PriorityQueue;

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
        int[] rank = new int[board.placed.length];
        for (int number = 0; number < rank.length; number++) {
            rank[number] = guidance.rank(board.activity(number).id());
        }
        PriorityQueue<Integer> ready = new PriorityQueue<>((one, other) -> inOrder(one, other, rank, priorities));
        int[] open = board.network.openPredecessors();
        boolean[] first = new boolean[open.length];
        for (int number = 0; number < open.length; number++) {
            first[number] = open[number] == 0;
        }
        for (int number = 0; number < open.length; number++) {
            if (first[number] && board.network.isFree(number)) {
                ready.add(number);
            } else if (first[number]) {
                freeSuccessors(number, open, ready);
            }
        }
        while (!ready.isEmpty()) {
            int number = ready.remove();
            place(number);
            freeSuccessors(number, open, ready);
        }
    }

    /** One comparison for all four questions: it is asked some hundred thousand times, in a new process by interpreted code. */
    private static int inOrder(int one, int other, int[] rank, Priorities priorities) {
        if (rank[one] != rank[other]) {
            return Integer.compare(rank[one], rank[other]);
        }
        if (priorities.latestStart[one] != priorities.latestStart[other]) {
            return Integer.compare(priorities.latestStart[one], priorities.latestStart[other]);
        }
        return priorities.weight[one] == priorities.weight[other]
                ? Integer.compare(one, other)
                : Integer.compare(priorities.weight[other], priorities.weight[one]);
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
        Readiness free = Readiness.of(number, board);
        Readiness ready =
                free.notBefore(guidance.notBefore(board.activity(number).id()), board);
        Work work = board.activity(number).work();
        if (work instanceof Work.Waiting wait) {
            placing.waiting(number, wait, ready);
        } else if (work instanceof Work.AtDesk desk) {
            placing.atDesk(number, desk.halfDays(), ready);
        } else {
            List<Integer> crews = crews(number);
            Readiness bounding = crews.size() == 1 ? bounding(number, crews.get(0), free, ready) : ready;
            placing.byFirstCrew(number, crews, crew -> placing.choice.halfDays(number, crew), bounding);
        }
    }

    /** Of a start that is held: what would bound it anyway, where its crew has no room for it earlier. */
    private Readiness bounding(int number, int crew, Readiness free, Readiness held) {
        if (free.slot() == held.slot()) {
            return held;
        }
        int halfDays = placing.choice.halfDays(number, crew);
        return placing.search
                .first(number, crew, halfDays, free.slot(), free.bound(), board.time.size())
                .filter(earliest -> earliest.start() >= held.slot())
                .map(earliest -> free)
                .orElse(held);
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
