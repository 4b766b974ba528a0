package org.plumbrow.calc.planning.search;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Who has to start first to keep its promises. */
final class Urgency {

    private final BranchModel model;
    private final int[] latestStart;

    Urgency(BranchModel model) {
        this.model = model;
        latestStart = new int[model.size()];
        int[] latestFinish = new int[model.size()];
        Arrays.fill(latestFinish, model.slots.size);
        for (Due due : model.dues) {
            for (int task : due.tasks) {
                latestFinish[task] = Math.min(latestFinish[task], due.slot);
            }
        }
        for (int at = model.order.length - 1; at >= 0; at--) {
            int number = model.order[at];
            latestStart[number] = latestFinish[number] - typicalLength(model.tasks[number]) + 1;
            for (int before : model.tasks[number].predecessors) {
                latestFinish[before] = Math.min(latestFinish[before], latestStart[number] - 1);
            }
        }
    }

    int[] latestStart() {
        return latestStart;
    }

    private int typicalLength(Task task) {
        if (task.kind == Task.Kind.WAIT) {
            int from = Math.min(task.release, model.slots.size - 1);
            return task.waitEnd(from) - from + 1;
        }
        return Arrays.stream(task.halfDays).min().orElse(1);
    }

    int[] tieRank() {
        int[] weight = new int[model.projects.length];
        for (Due due : model.dues) {
            weight[due.project] = Math.max(weight[due.project], due.weight);
        }
        int[] byWeight = IntStream.range(0, model.size())
                .boxed()
                .sorted(Comparator.<Integer>comparingInt(number -> -weight[model.tasks[number].project])
                        .thenComparing(Comparator.naturalOrder()))
                .mapToInt(Integer::intValue)
                .toArray();
        int[] rank = new int[byWeight.length];
        for (int at = 0; at < byWeight.length; at++) {
            rank[byWeight[at]] = at;
        }
        return rank;
    }
}
