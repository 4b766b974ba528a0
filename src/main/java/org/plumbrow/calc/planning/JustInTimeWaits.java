package org.plumbrow.calc.planning;

import java.time.LocalDate;
import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * Moves waits that should begin as late as their successors allow (a locate that would run out, an appointment nobody
 * asks for months ahead) to that day. No other date moves, so a wait that binds a successor stays where it is.
 */
final class JustInTimeWaits {

    private final Board board;

    JustInTimeWaits(Board board) {
        this.board = board;
    }

    void moveAll() {
        int[] order = board.network.order;
        for (int at = order.length - 1; at >= 0; at--) {
            int number = order[at];
            if (board.network.isFree(number)
                    && board.placed[number] != null
                    && board.activity(number).work() instanceof Work.Waiting wait
                    && wait.justInTime()) {
                firstNeed(number).ifPresent(need -> move(number, wait, need));
            }
        }
    }

    private record Need(String activityId, HalfDay start, LocalDate answeredBefore) {}

    private Optional<Need> firstNeed(int number) {
        String id = board.activity(number).id();
        Optional<Need> first = Optional.empty();
        for (int next : board.network.successors[number]) {
            Placement after = board.placed[next];
            if (after == null) {
                continue;
            }
            if (after.bound() instanceof Bound.After bound && bound.activityId().equals(id)) {
                return Optional.empty();
            }
            Predecessor link = link(next, id);
            HalfDay lagged = board.time.at(Math.max(0, board.time.axis.atOrAfter(after.start()) - link.lagHalfDays()));
            LocalDate before = lagged.date().minusDays(link.lagCalendarDays());
            if (first.isEmpty() || before.isBefore(first.get().answeredBefore())) {
                first = Optional.of(new Need(after.activityId(), after.start(), before));
            }
        }
        return first;
    }

    private Predecessor link(int next, String id) {
        return board.activity(next).predecessors().stream()
                .filter(link -> link.activityId().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private void move(int number, Work.Waiting wait, Need need) {
        LocalDate day = board.time.lastDayToBegin(wait, need.answeredBefore());
        int slot = board.time.axis.atOrBefore(HalfDay.afternoon(day));
        Placement now = board.placed[number];
        if (slot < 0 || !board.time.at(slot).isAfter(now.start())) {
            return;
        }
        HalfDay start = board.time.at(slot);
        HalfDay finish = board.time.answered(start, wait);
        if (finish.date().isBefore(need.answeredBefore())) {
            board.place(number, start, finish, new Bound.JustInTime(need.activityId(), need.start()));
        }
    }
}
