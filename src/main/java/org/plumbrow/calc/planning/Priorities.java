package org.plumbrow.calc.planning;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * The latest start of each activity that still keeps its project's promises, crews and equipment left aside: who has to
 * start first is served first. What no promise waits for comes after everything that one waits for.
 */
final class Priorities {

    final int[] latestStart;
    final int[] weight;
    private final Board board;

    Priorities(Board board) {
        this.board = board;
        int count = board.placed.length;
        latestStart = new int[count];
        weight = new int[count];
        int[] latestFinish = new int[count];
        Arrays.fill(latestFinish, board.time.size());
        Map<String, Integer> weights = new HashMap<>();
        for (Promise promise : board.problem.promises()) {
            int due = dueSlot(board.time, promise.date());
            for (String id : promise.activityIds()) {
                int number = board.network.numbers.get(id);
                latestFinish[number] = Math.min(latestFinish[number], due);
            }
            weights.merge(promise.projectId(), promise.weight(), Math::max);
        }
        int[] order = board.network.order;
        for (int at = order.length - 1; at >= 0; at--) {
            int number = order[at];
            latestStart[number] = latestStartOf(number, latestFinish[number]);
            weight[number] = weights.getOrDefault(board.activity(number).projectId(), 0);
            for (int link = 0; link < board.network.predecessors[number].length; link++) {
                int before = board.network.predecessors[number][link];
                int latest = latestStart[number]
                        - lag(board.activity(number).predecessors().get(link))
                        - 1;
                latestFinish[before] = Math.min(latestFinish[before], latest);
            }
        }
    }

    /** The last slot of the promised day, or of the last working day before it. */
    static int dueSlot(TimeLine time, LocalDate date) {
        return time.axis.atOrBefore(HalfDay.afternoon(date));
    }

    private int latestStartOf(int number, int latestFinish) {
        Activity activity = board.activity(number);
        return activity.fix() instanceof Fix.Pinned pinned
                ? board.time.axis.atOrAfter(pinned.start())
                : latestFinish - shortest(activity.work()) + 1;
    }

    private int shortest(Work work) {
        if (work instanceof Work.ByCrew crews) {
            int least = Integer.MAX_VALUE;
            for (int halfDays : crews.halfDaysByCrew().values()) {
                least = Math.min(least, halfDays);
            }
            return least == Integer.MAX_VALUE ? 1 : least;
        }
        if (work instanceof Work.AtDesk desk) {
            return desk.halfDays();
        }
        Work.Waiting wait = (Work.Waiting) work;
        return asSlots(wait.days(), wait.counting().workingWeekdays().size());
    }

    private int lag(Predecessor link) {
        return link.lagHalfDays() + asSlots(link.lagCalendarDays(), 7);
    }

    /** Half-days of the branch that lie in so many days of somebody with that many days a week; near enough to rank. */
    private int asSlots(int days, int daysAWeek) {
        int ownDays = board.problem.calendar().workingWeekdays().size();
        return Math.round(2f * days * ownDays / daysAWeek);
    }
}
