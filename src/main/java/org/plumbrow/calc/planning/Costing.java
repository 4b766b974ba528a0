package org.plumbrow.calc.planning;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingAxis;

/** Counts what a plan costs, from its placements alone. */
public final class Costing {

    private final PlanningProblem problem;
    private final Optional<Published> published;
    private final WorkingAxis axis;
    private final Map<String, Activity> activities = new HashMap<>();
    private final Map<String, Optional<Site>> sites = new HashMap<>();

    public Costing(PlanningProblem problem, Optional<Published> published) {
        this.problem = problem;
        this.published = published;
        axis = new WorkingAxis(problem.calendar(), problem.today().date(), problem.lastDay());
        problem.activities().forEach(activity -> activities.put(activity.id(), activity));
        problem.projects().forEach(project -> sites.put(project.id(), project.site()));
    }

    public PlanCost of(Plan plan) {
        long disturbance = published.isEmpty()
                ? 0
                : plan.placements().values().stream()
                        .mapToLong(this::disturbance)
                        .sum();
        long idle = 0;
        long travel = 0;
        Map<String, List<Placement>> ofCrew = new HashMap<>();
        for (Crew crew : problem.crews()) {
            List<Placement> booked = ofCrew.computeIfAbsent(crew.id(), plan::ofCrew);
            idle += idle(crew, booked);
            travel += travel(booked);
        }
        return new PlanCost(plan.findings().size(), plan.weightedHalfDaysLate(), disturbance, idle, travel);
    }

    /** How much one placement differs from what people know; 0 where nobody counts on it. */
    public long disturbance(Placement placement) {
        boolean free = activities.get(placement.activityId()).fix() instanceof Fix.Free;
        return free
                ? published
                        .flatMap(plan -> plan.known(placement.activityId()))
                        .map(known -> moved(known, placement))
                        .orElse(0L)
                : 0;
    }

    private long moved(Placement known, Placement now) {
        int slots = Math.abs(axis.atOrAfter(known.start()) - axis.atOrAfter(now.start()));
        return Math.min(PlanCost.MOST_MOVED, slots) + (known.crewId().equals(now.crewId()) ? 0 : PlanCost.CREW_CHANGED);
    }

    /** Half-days up to the crew's last work on which it is there and not booked. */
    private long idle(Crew crew, List<Placement> booked) {
        HalfDay last =
                booked.stream().map(Placement::finish).max(HalfDay::compareTo).orElse(problem.today());
        boolean[] taken = new boolean[Math.max(0, axis.atOrBefore(last) + 1)];
        booked.forEach(placement -> mark(taken, placement.start(), placement.finish()));
        crew.absences().forEach(absence -> mark(taken, absence.first(), absence.last()));
        long idle = 0;
        for (boolean busy : taken) {
            idle += busy ? 0 : 1;
        }
        return idle;
    }

    private void mark(boolean[] taken, HalfDay first, HalfDay last) {
        int to = Math.min(axis.atOrBefore(last), taken.length - 1);
        for (int slot = axis.atOrAfter(first); slot <= to; slot++) {
            taken[slot] = true;
        }
    }

    /** @param booked by start */
    private long travel(List<Placement> booked) {
        long minutes = 0;
        Optional<Site> before = Optional.empty();
        for (Placement placement : booked) {
            Optional<Site> here =
                    sites.get(activities.get(placement.activityId()).projectId());
            minutes += before.isPresent() && here.isPresent() ? before.get().minutesTo(here.get()) : 0;
            before = here.isPresent() ? here : before;
        }
        return minutes;
    }
}
