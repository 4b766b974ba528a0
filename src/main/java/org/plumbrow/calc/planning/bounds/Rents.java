package org.plumbrow.calc.planning.bounds;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.CrewDays;
import org.plumbrow.calc.planning.search.Task;

/** What a work pays for its crew and equipment at the prices of the moment, by where it starts. Works of one kind share it. */
final class Rents {

    /** Of each task and each crew that may do it: as {@link Places#lengths}. */
    final int[][][] lengths;
    /** Of the same: the rent, by the number of the crew's present slot. */
    final double[][][] rent;

    private final BranchModel model;
    private final Prices prices;
    private final List<Kind> kinds = new ArrayList<>();

    private record Kind(Task task, int crew, int[] lengths, double[] rent) {}

    Rents(BranchModel model, Places places, Prices prices) {
        this.model = model;
        this.prices = prices;
        lengths = new int[model.size()][][];
        rent = new double[model.size()][][];
        Map<int[], double[]> known = new IdentityHashMap<>();
        for (int number = 0; number < lengths.length; number++) {
            Task task = model.tasks[number];
            lengths[number] = new int[task.crews.length][];
            rent[number] = new double[task.crews.length][];
            for (int choice = 0; choice < task.crews.length; choice++) {
                int crew = task.crews[choice];
                int[] table = places.lengths(task, choice);
                lengths[number][choice] = table;
                rent[number][choice] = known.computeIfAbsent(table, none -> new double[table.length]);
                if (kinds.size() < known.size()) {
                    kinds.add(new Kind(task, crew, table, rent[number][choice]));
                }
            }
        }
    }

    /** After prices have moved and been summed up. */
    void renew(int horizon) {
        for (Kind kind : kinds) {
            CrewDays crew = model.crews[kind.crew];
            double[] paid = prices.crewBefore[kind.crew];
            int to = crew.indexAtOrAfter[horizon];
            for (int index = 0; index < to; index++) {
                int length = kind.lengths[index];
                if (length > 0) {
                    kind.rent[index] =
                            paid[index + length] - paid[index] + forEquipment(kind.task, crew, index, length);
                }
            }
        }
    }

    private double forEquipment(Task task, CrewDays crew, int index, int length) {
        double sum = 0;
        for (int need = 0; need < task.pools.length; need++) {
            double[] before = prices.poolBefore[task.pools[need]];
            sum += task.pieces[need] * (before[crew.present[index + length - 1] + 1] - before[crew.present[index]]);
        }
        return sum;
    }
}
