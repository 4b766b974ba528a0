package org.plumbrow.calc.planning.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.calc.calendar.WorkingAxis;
import org.plumbrow.calc.planning.Activity;
import org.plumbrow.calc.planning.Fix;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.calc.planning.PlanningProblem;
import org.plumbrow.calc.planning.Project;
import org.plumbrow.calc.planning.Promise;
import org.plumbrow.calc.planning.Published;

/**
 * The free activities of a problem as numbers, on the axis of working half-days ("slots"). What is settled is already
 * booked; what the first plan could not place is left out.
 */
public final class BranchModel {

    public final PlanningProblem problem;
    public final Slots slots;
    public final Task[] tasks;
    /** Each task behind its predecessors. */
    public final int[] order;

    public final int[][] successors;
    /** Of each project that has a task: its tasks, in order. */
    public final int[][] projects;

    public final Due[] dues;
    /** Dues of each project. */
    public final int[][] duesOfProject;

    public final CrewDays[] crews;
    public final Pool[] pools;
    /** Tasks of each group that one crew does, by group number. */
    public final int[][] groups;
    /** Of settled or hopeless promises: lateness that no order changes, already weighted. */
    public final long settledLateness;
    /** The latest start that keeps the project's promises, crews left aside. */
    public final int[] latestStart;
    /** Who comes first among equal keys, by weight and then by the problem's order. */
    public final int[] tieRank;

    final FlatTasks flat;

    private final Map<String, Integer> numbers = new HashMap<>();

    private BranchModel(PlanningProblem problem, Plan first, Optional<Published> published) {
        this.problem = problem;
        slots = new Slots(problem);
        BookedDays booked = new BookedDays(problem, first, slots);
        crews = booked.crews();
        pools = booked.pools();
        List<Activity> free = problem.activities().stream()
                .filter(activity -> activity.fix() instanceof Fix.Free)
                .filter(activity -> first.of(activity.id()).isPresent())
                .toList();
        for (int number = 0; number < free.size(); number++) {
            numbers.put(free.get(number).id(), number);
        }
        Map<String, Integer> projectNumbers = new HashMap<>();
        free.forEach(activity -> projectNumbers.putIfAbsent(activity.projectId(), projectNumbers.size()));
        TaskMaking making = new TaskMaking(problem, first, slots, numbers, projectNumbers, published);
        tasks = free.stream().map(making::task).toArray(Task[]::new);
        groups = making.groups();
        successors = successors(tasks);
        flat = new FlatTasks(tasks, successors, new Tolls(tasks, groups, crews.length));
        order = order(tasks, successors);
        projects = byProject(projectNumbers.size());
        List<Due> found = new ArrayList<>();
        long settled = 0;
        for (Promise promise : problem.promises()) {
            Due due = due(promise, first, projectNumbers);
            settled += due.tasks.length == 0 ? (long) due.settled * due.weight : 0;
            if (due.tasks.length > 0) {
                found.add(due);
            }
        }
        settledLateness = settled;
        dues = found.toArray(Due[]::new);
        duesOfProject = duesOfProject(projectNumbers.size());
        Urgency urgency = new Urgency(this);
        latestStart = urgency.latestStart();
        tieRank = urgency.tieRank();
    }

    /**
     * @param first a plan of the problem; where its settled activities stand is taken over
     */
    public static BranchModel of(PlanningProblem problem, Plan first, Optional<Published> published) {
        return new BranchModel(problem, first, published);
    }

    public int size() {
        return tasks.length;
    }

    /** The number of a free activity, or -1. */
    public int number(String activityId) {
        return numbers.getOrDefault(activityId, -1);
    }

    private Due due(Promise promise, Plan first, Map<String, Integer> projectNumbers) {
        WorkingAxis axis = slots.axis;
        int due = slots.due(promise.date());
        int settled = 0;
        List<Integer> open = new ArrayList<>();
        for (String id : promise.activityIds()) {
            Integer number = numbers.get(id);
            Optional<Placement> placed = first.of(id);
            if (placed.isEmpty()) {
                return new Due(promise, new int[0], due, -1, 0);
            }
            if (number != null) {
                open.add(number);
            } else if (placed.get().finish().date().isAfter(promise.date())) {
                settled = Math.max(
                        settled, Math.max(1, axis.atOrBefore(placed.get().finish()) - due));
            }
        }
        int project = projectNumbers.getOrDefault(promise.projectId(), -1);
        return new Due(promise, open.stream().mapToInt(Integer::intValue).toArray(), due, project, settled);
    }

    private static int[][] successors(Task[] tasks) {
        List<List<Integer>> after = new ArrayList<>();
        for (int number = 0; number < tasks.length; number++) {
            after.add(new ArrayList<>());
        }
        for (int number = 0; number < tasks.length; number++) {
            for (int before : tasks[number].predecessors) {
                after.get(before).add(number);
            }
        }
        return ints(after);
    }

    private static int[] order(Task[] tasks, int[][] successors) {
        int[] open = new int[tasks.length];
        int[] order = new int[tasks.length];
        int count = 0;
        for (int number = 0; number < tasks.length; number++) {
            open[number] = tasks[number].predecessors.length;
            if (open[number] == 0) {
                order[count++] = number;
            }
        }
        for (int at = 0; at < count; at++) {
            for (int next : successors[order[at]]) {
                if (--open[next] == 0) {
                    order[count++] = next;
                }
            }
        }
        return order;
    }

    private int[][] byProject(int count) {
        List<List<Integer>> own = new ArrayList<>();
        for (int project = 0; project < count; project++) {
            own.add(new ArrayList<>());
        }
        for (int number : order) {
            own.get(tasks[number].project).add(number);
        }
        return ints(own);
    }

    private int[][] duesOfProject(int count) {
        List<List<Integer>> own = new ArrayList<>();
        for (int project = 0; project < count; project++) {
            own.add(new ArrayList<>());
        }
        for (int due = 0; due < dues.length; due++) {
            if (dues[due].project >= 0) {
                own.get(dues[due].project).add(due);
            }
        }
        return ints(own);
    }

    static int[][] ints(List<List<Integer>> lists) {
        return lists.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    /** The name of a project by its number here. */
    public String projectName(int project) {
        String id = tasks[projects[project][0]].activity.projectId();
        return problem.projects().stream()
                .filter(each -> each.id().equals(id))
                .map(Project::name)
                .findFirst()
                .orElse(id);
    }
}
