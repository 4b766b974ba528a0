package org.plumbrow.calc.planning;

import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * From which slot on an activity may start, and what says so.
 *
 * @param slot may lie beyond the end of the time line
 */
record Readiness(int slot, Bound bound) {

    /** Of a free activity: today, its release, its predecessors; the latest of them bounds it. All are placed. */
    static Readiness of(int number, Board board) {
        Readiness latest = board.earliest;
        Activity activity = board.activity(number);
        if (activity.release().isPresent()) {
            latest = latest.orLater(released(activity, board));
        }
        return latest.orLater(afterPredecessors(number, board));
    }

    /**
     * What the predecessors that have a date say; before everything when there are none. Of those that bind alike rather one
     * that could not be earlier than one that is kept on its date: a wait that is timed to what needs it ends with what is needed.
     */
    static Readiness afterPredecessors(int number, Board board) {
        Readiness latest = new Readiness(0, new Bound.Today());
        boolean isKept = false;
        List<Predecessor> links = board.activity(number).predecessors();
        for (int link = 0; link < links.size(); link++) {
            Placement before = board.placed[board.network.predecessors[number][link]];
            if (before != null) {
                int slot = board.time.readyAfter(before.finish(), links.get(link));
                if (slot > latest.slot || (slot == latest.slot && isKept)) {
                    latest = new Readiness(slot, new Bound.After(before.activityId(), before.finish()));
                    isKept = before.bound() instanceof Bound.Kept;
                }
            }
        }
        return latest;
    }

    /** Held back until then, if that is later. */
    Readiness notBefore(Optional<HalfDay> held, Board board) {
        return held.map(until -> orLater(new Readiness(board.time.axis.atOrAfter(until), new Bound.Kept(until))))
                .orElse(this);
    }

    private static Readiness released(Activity activity, Board board) {
        return offOrOn(
                activity.release().orElseThrow(),
                new Bound.Released(activity.release().orElseThrow()),
                board.problem,
                board.time);
    }

    /** From a half-day on; if that is a day off, this bounds it. */
    static Readiness offOrOn(HalfDay wanted, Bound bound, PlanningProblem problem, TimeLine time) {
        int slot = time.axis.atOrAfter(wanted);
        return problem.calendar()
                .whyClosed(wanted.date())
                .map(reason -> new Readiness(slot, new Bound.DayOff(wanted, reason)))
                .orElse(new Readiness(slot, bound));
    }

    private Readiness orLater(Readiness other) {
        return other.slot > slot ? other : this;
    }
}
