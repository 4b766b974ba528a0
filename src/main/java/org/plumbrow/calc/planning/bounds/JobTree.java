package org.plumbrow.calc.planning.bounds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Due;
import org.plumbrow.calc.planning.search.Task;

/**
 * The tasks of one project that a promise waits for, each with the one thing after it that leaves least time: a tree.
 * Leaving the other links out can only make the job earlier.
 */
final class JobTree {

    /** Tasks, each behind those before it. */
    final int[] tasks;
    /** Of each of them: those of the tasks (by place in the list) that come right before it, and by which link. */
    final int[][] before;

    final int[][] links;
    /** Promises of that one task, by its place. */
    final List<List<Due>> own;
    /** Promises of several tasks. */
    final List<Due> shared;
    /** Promises whose tasks all count with another one. */
    final List<Due> leftOut;
    /** Places of those after which nothing comes and that no promise of several tasks holds. */
    final int[] last;
    /** The place of each task, or -1. */
    private final int[] place;

    private final List<Due> dues;

    private JobTree(BranchModel model, int project, List<Due> dues) {
        this.dues = dues;
        boolean[] counts = counting(model, project, dues);
        tasks = Arrays.stream(model.projects[project])
                .filter(number -> counts[number])
                .toArray();
        place = new int[model.size()];
        Arrays.fill(place, -1);
        for (int at = 0; at < tasks.length; at++) {
            place[tasks[at]] = at;
        }
        own = new ArrayList<>();
        Arrays.stream(tasks).forEach(number -> own.add(new ArrayList<>()));
        shared = new ArrayList<>();
        leftOut = new ArrayList<>();
        boolean[] held = new boolean[tasks.length];
        for (Due due : dues) {
            hold(due, held);
        }
        int[] after = after(model, held);
        before = new int[tasks.length][];
        links = new int[tasks.length][];
        for (int at = 0; at < tasks.length; at++) {
            join(model, at, after);
        }
        last = IntStream.range(0, tasks.length)
                .filter(at -> after[at] < 0 && !held[at])
                .toArray();
    }

    static List<JobTree> of(BranchModel model) {
        List<JobTree> trees = new ArrayList<>();
        for (int project = 0; project < model.projects.length; project++) {
            List<Due> dues = Arrays.stream(model.duesOfProject[project])
                    .mapToObj(due -> model.dues[due])
                    .toList();
            if (!dues.isEmpty()) {
                trees.add(new JobTree(model, project, dues));
            }
        }
        return trees;
    }

    private static boolean[] counting(BranchModel model, int project, List<Due> dues) {
        boolean[] counts = new boolean[model.size()];
        dues.forEach(due -> Arrays.stream(due.tasks)
                .filter(number -> model.tasks[number].project == project)
                .forEach(number -> counts[number] = true));
        int[] own = model.projects[project];
        for (int at = own.length - 1; at >= 0; at--) {
            for (int first : model.tasks[own[at]].predecessors) {
                counts[first] |= counts[own[at]] && model.tasks[first].project == project;
            }
        }
        leaveOutWhatIsFree(model, own, dues, counts);
        return counts;
    }

    /** Desks and waits with no crew before them are done at once; how soon that is, {@link ChainBound#start} knows. */
    private static void leaveOutWhatIsFree(BranchModel model, int[] own, List<Due> dues, boolean[] counts) {
        boolean[] pays = new boolean[model.size()];
        dues.forEach(due -> Arrays.stream(due.tasks).forEach(number -> pays[number] = true));
        for (int number : own) {
            pays[number] |= model.tasks[number].kind == Task.Kind.CREW;
            for (int before : model.tasks[number].predecessors) {
                pays[number] |= pays[before];
            }
            counts[number] &= pays[number];
        }
    }

    int place(int number) {
        return place[number];
    }

    /** A task that a promise of several tasks holds already is counted with that one; the promise is kept for the rest. */
    private void hold(Due due, boolean[] held) {
        int[] open = Arrays.stream(due.tasks)
                .filter(number -> place[number] >= 0 && !held[place[number]])
                .toArray();
        if (due.tasks.length == 1 && open.length == 1) {
            own.get(place[open[0]]).add(due);
        } else if (open.length == due.tasks.length) {
            Arrays.stream(open).forEach(number -> held[place[number]] = true);
            shared.add(due);
        } else if (open.length > 0) {
            own.get(place[open[open.length - 1]]).add(due);
        } else {
            leftOut.add(due);
        }
    }

    private int[] after(BranchModel model, boolean[] held) {
        int[] after = new int[tasks.length];
        Arrays.fill(after, -1);
        for (int at = 0; at < tasks.length; at++) {
            int least = Integer.MAX_VALUE;
            for (int next : model.successors[tasks[at]]) {
                boolean counts = place[next] >= 0 && !held[at];
                if (counts && model.latestStart[next] < least) {
                    least = model.latestStart[next];
                    after[at] = place[next];
                }
            }
        }
        return after;
    }

    private void join(BranchModel model, int at, int[] after) {
        int[] first = model.tasks[tasks[at]].predecessors;
        List<Integer> places = new ArrayList<>();
        List<Integer> by = new ArrayList<>();
        for (int link = 0; link < first.length; link++) {
            int from = place[first[link]];
            if (from >= 0 && after[from] == at && !places.contains(from)) {
                places.add(from);
                by.add(link);
            }
        }
        before[at] = places.stream().mapToInt(Integer::intValue).toArray();
        links[at] = by.stream().mapToInt(Integer::intValue).toArray();
    }

    /** What the promises of the job are late in a plan, weighted. */
    double lateCost(BranchModel model, Dates plan) {
        Decoder decoder = new Decoder(model);
        return dues.stream()
                .mapToDouble(due -> (double) due.weight * decoder.late(due, plan))
                .sum();
    }

    /** What the job uses in a plan, as {@link Usage#cellsSince}. */
    int[] cells(BranchModel model, Dates plan) {
        Usage usage = new Usage(model);
        for (int number : tasks) {
            if (plan.crew[number] >= 0) {
                int[] indexes = model.crews[plan.crew[number]].indexAtOrAfter;
                int index = indexes[plan.start[number]];
                usage.add(model.tasks[number], plan.crew[number], index, indexes[plan.finish[number] + 1] - index);
            }
        }
        return usage.cellsSince();
    }
}
