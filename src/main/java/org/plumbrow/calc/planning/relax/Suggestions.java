package org.plumbrow.calc.planning.relax;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Bound;
import org.plumbrow.calc.planning.Crew;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Work;

/** What the chain of binding constraints suggests to relax; anything else could not move the date. */
final class Suggestions {

    /** A week of work: what a branch can find help for. */
    private static final int A_WEEK = 5;

    /** More than people would read, and each costs a plan. */
    private static final int MOST = 24;

    private final PlanningProblem problem;
    private final Plan plan;
    private final Map<String, Activity> activities = new HashMap<>();
    private final Set<Relaxation> found = new LinkedHashSet<>();
    private String ownProject = "";

    private Suggestions(PlanningProblem problem, Plan plan) {
        this.problem = problem;
        this.plan = plan;
        problem.activities().forEach(activity -> activities.put(activity.id(), activity));
    }

    static List<Relaxation> of(PlanningProblem problem, Plan plan, String activityId) {
        Suggestions suggestions = new Suggestions(problem, plan);
        suggestions.follow(activityId);
        return suggestions.found.stream().limit(MOST).toList();
    }

    private void follow(String activityId) {
        ownProject = activity(activityId).projectId();
        Optional<Placement> target = plan.of(activityId);
        Set<String> seen = new HashSet<>();
        Optional<Placement> at = target;
        while (at.isPresent() && seen.add(at.get().activityId())) {
            Placement link = at.get();
            if (activity(link.activityId()).fix() instanceof Fix.Done) {
                break;
            }
            suggest(link, target.get().finish());
            at = before(link.bound()).flatMap(plan::of);
        }
    }

    private void suggest(Placement link, HalfDay asked) {
        Activity activity = activity(link.activityId());
        if (activity.work() instanceof Work.Waiting wait && wait.days() > 0) {
            found.add(new Relaxation.AnsweredSooner(activity.id(), Math.min(A_WEEK, wait.days())));
        }
        if (activity.fix() instanceof Fix.Pinned pinned) {
            found.add(new Relaxation.NotSettled(activity.id(), pinned.start()));
        }
        link.crewId().ifPresent(crew -> {
            found.add(new Relaxation.Saturdays(asked.date()));
            absencesWithin(crew, link);
        });
        suggest(link.bound(), link);
    }

    private void suggest(Bound bound, Placement link) {
        if (bound instanceof Bound.CrewBusy busy) {
            plan.of(busy.activityId()).ifPresent(other -> found.add(help(busy.crewId(), other)));
            servedBefore(busy.activityId());
        } else if (bound instanceof Bound.EquipmentBusy busy) {
            found.add(new Relaxation.OneMore(busy.equipmentId()));
            servedBefore(busy.activityId());
        } else if (bound instanceof Bound.EquipmentAway away) {
            found.add(new Relaxation.OneMore(away.equipmentId()));
        } else if (bound instanceof Bound.CrewAway away) {
            crew(away.crewId()).absences().stream()
                    .filter(absence -> absence.holds(away.until()))
                    .forEach(absence -> found.add(new Relaxation.CrewStays(away.crewId(), absence)));
            found.add(
                    new Relaxation.CrewLike(away.crewId(), firstDay(link.start().date()), A_WEEK));
        }
    }

    /** A second crew from the day on which the first could have come, had it not been elsewhere. */
    private Relaxation help(String crewId, Placement elsewhere) {
        return new Relaxation.CrewLike(crewId, firstDay(elsewhere.start().date()), A_WEEK);
    }

    private LocalDate firstDay(LocalDate wanted) {
        LocalDate today = problem.today().date();
        return problem.calendar().onOrAfter(wanted.isBefore(today) ? today : wanted);
    }

    private void absencesWithin(String crewId, Placement link) {
        crew(crewId).absences().stream()
                .filter(absence ->
                        absence.first().isAfter(link.start()) && absence.first().isBefore(link.finish()))
                .forEach(absence -> found.add(new Relaxation.CrewStays(crewId, absence)));
    }

    private void servedBefore(String otherActivityId) {
        Activity other = activity(otherActivityId);
        if (other.fix() instanceof Fix.Free && !other.projectId().equals(ownProject)) {
            found.add(new Relaxation.ServedBefore(ownProject, other.projectId()));
        }
    }

    private static Optional<String> before(Bound bound) {
        List<String> next = new ArrayList<>();
        if (bound instanceof Bound.After after) {
            next.add(after.activityId());
        } else if (bound instanceof Bound.CrewBusy busy) {
            next.add(busy.activityId());
        } else if (bound instanceof Bound.EquipmentBusy busy) {
            next.add(busy.activityId());
        }
        return next.stream().findFirst();
    }

    private Activity activity(String id) {
        Activity activity = activities.get(id);
        if (activity == null) {
            throw new IllegalArgumentException("no activity " + id);
        }
        return activity;
    }

    private Crew crew(String id) {
        return problem.crews().stream()
                .filter(crew -> crew.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
