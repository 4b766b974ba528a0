package org.plumbrow.calc.planning;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.calendar.WorkingCalendar;

/**
 * All that a plan of a branch is made from. What people can get wrong (a skill nobody has, a pin on a Sunday, a circle
 * of predecessors) is allowed here and answered by a finding of the plan; what only a program can get wrong (an id that
 * does not exist, or exists twice) is refused.
 *
 * @param calendar the branch's working days
 * @param today what has not begun starts no earlier than this half-day
 * @param lastDay the plan does not look beyond; several years ahead costs nothing
 * @param projects in the order in which equals are served
 * @param activities of all open projects, each predecessor among them and of any project
 */
public record PlanningProblem(
        WorkingCalendar calendar,
        HalfDay today,
        LocalDate lastDay,
        List<Project> projects,
        List<Activity> activities,
        List<Crew> crews,
        List<Equipment> equipment,
        List<Promise> promises,
        WeatherAllowance weather) {

    public PlanningProblem {
        if (!lastDay.isAfter(today.date())) {
            throw new IllegalArgumentException("the last day " + lastDay + " does not lie after " + today.date());
        }
        projects = List.copyOf(projects);
        activities = List.copyOf(activities);
        crews = List.copyOf(crews);
        equipment = List.copyOf(equipment);
        promises = List.copyOf(promises);
        Set<String> projectIds = once("project", projects.stream().map(Project::id));
        Set<String> activityIds = once("activity", activities.stream().map(Activity::id));
        Set<String> crewIds = once("crew", crews.stream().map(Crew::id));
        once("equipment", equipment.stream().map(Equipment::id));
        among(
                "project",
                projectIds,
                activities.stream().map(Activity::projectId).toList());
        among("project", projectIds, promises.stream().map(Promise::projectId).toList());
        among(
                "activity",
                activityIds,
                promises.stream()
                        .map(Promise::activityIds)
                        .flatMap(List::stream)
                        .toList());
        among("activity", activityIds, namedPredecessors(activities));
        among("crew", crewIds, namedCrews(activities));
    }

    /**
     * The same branch with some activities only, and all that comes before them.
     *
     * @param wanted ids of activities of this problem
     * @param asked promises on what is left
     */
    public PlanningProblem narrowedTo(Collection<String> wanted, List<Promise> asked) {
        Map<String, Activity> byId = activities.stream().collect(Collectors.toMap(Activity::id, one -> one));
        Set<String> needed = new HashSet<>();
        Deque<String> open = new ArrayDeque<>(wanted);
        while (!open.isEmpty()) {
            String id = open.remove();
            if (needed.add(id)) {
                byId.get(id).predecessors().forEach(before -> open.add(before.activityId()));
            }
        }
        return new PlanningProblem(
                calendar,
                today,
                lastDay,
                projects,
                activities.stream().filter(one -> needed.contains(one.id())).toList(),
                crews,
                equipment,
                asked,
                weather);
    }

    /** @param change asked of each activity */
    public PlanningProblem withActivities(UnaryOperator<Activity> change) {
        return new PlanningProblem(
                calendar,
                today,
                lastDay,
                projects,
                activities.stream().map(change).toList(),
                crews,
                equipment,
                promises,
                weather);
    }

    private static List<String> namedPredecessors(List<Activity> activities) {
        return activities.stream()
                .flatMap(activity -> activity.predecessors().stream())
                .map(Predecessor::activityId)
                .toList();
    }

    private static Set<String> namedCrews(List<Activity> activities) {
        Set<String> named = new HashSet<>();
        for (Activity activity : activities) {
            if (activity.work() instanceof Work.ByCrew work) {
                named.addAll(work.halfDaysByCrew().keySet());
            }
            if (activity.fix() instanceof Fix.Pinned pinned) {
                pinned.crewId().ifPresent(named::add);
            }
            if (activity.fix() instanceof Fix.Begun begun) {
                begun.crewId().ifPresent(named::add);
            }
        }
        return named;
    }

    private static Set<String> once(String what, Stream<String> ids) {
        Set<String> seen = new HashSet<>();
        ids.forEach(id -> {
            if (!seen.add(id)) {
                throw new IllegalArgumentException(what + " " + id + " is named twice");
            }
        });
        return seen;
    }

    private static void among(String what, Set<String> known, Collection<String> named) {
        String unknown = named.stream().filter(id -> !known.contains(id)).collect(Collectors.joining(", "));
        if (!unknown.isEmpty()) {
            throw new IllegalArgumentException("no " + what + " " + unknown);
        }
    }
}
