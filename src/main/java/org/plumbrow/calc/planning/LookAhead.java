package org.plumbrow.calc.planning;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingAxis;

/** What a branch manager looks for in a plan between two dates: crews with nothing to do, and crews booked twice. */
public final class LookAhead {

    private final PlanningProblem problem;
    private final Plan plan;
    private final WorkingAxis days;

    /** @param last included */
    public LookAhead(PlanningProblem problem, Plan plan, LocalDate first, LocalDate last) {
        this.problem = problem;
        this.plan = plan;
        days = new WorkingAxis(problem.calendar(), first, last);
    }

    /** Idle runs, crew by crew in the problem's order; a booking or an absence ends a run, a day off does not. */
    public List<IdleGap> idle() {
        List<IdleGap> gaps = new ArrayList<>();
        for (Crew crew : problem.crews()) {
            boolean[] taken = taken(crew);
            int from = 0;
            for (int slot = 0; slot <= taken.length; slot++) {
                if (slot == taken.length || taken[slot]) {
                    if (slot > from) {
                        gaps.add(new IdleGap(crew.id(), days.at(from), days.at(slot - 1), slot - from));
                    }
                    from = slot + 1;
                }
            }
        }
        return List.copyOf(gaps);
    }

    private boolean[] taken(Crew crew) {
        boolean[] taken = new boolean[days.size()];
        for (Placement placement : plan.ofCrew(crew.id())) {
            mark(taken, placement.start(), placement.finish());
        }
        for (Absence absence : crew.absences()) {
            mark(taken, absence.first(), absence.last());
        }
        return taken;
    }

    private void mark(boolean[] taken, HalfDay first, HalfDay last) {
        for (int slot = days.atOrAfter(first); slot <= days.atOrBefore(last); slot++) {
            taken[slot] = true;
        }
    }

    /** Double bookings, crew by crew, by start; three at once are three pairs. */
    public List<Clash> clashes() {
        List<Clash> clashes = new ArrayList<>();
        for (Crew crew : problem.crews()) {
            List<Placement> booked = plan.ofCrew(crew.id());
            for (int one = 0; one < booked.size(); one++) {
                for (int two = one + 1; two < booked.size(); two++) {
                    clash(crew, booked.get(one), booked.get(two), clashes);
                }
            }
        }
        return List.copyOf(clashes);
    }

    /** The second starts no earlier than the first. */
    private void clash(Crew crew, Placement one, Placement two, List<Clash> clashes) {
        HalfDay end = one.finish().isBefore(two.finish()) ? one.finish() : two.finish();
        int from = days.atOrAfter(two.start());
        int to = days.atOrBefore(end);
        if (from <= to) {
            clashes.add(new Clash(
                    crew.id(), one.activityId(), two.activityId(), days.at(from), days.at(to), to - from + 1));
        }
    }
}
