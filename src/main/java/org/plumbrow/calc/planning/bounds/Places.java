package org.plumbrow.calc.planning.bounds;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.CrewDays;
import org.plumbrow.calc.planning.search.Task;

/** Where a crew can do a task at all, when only what is settled stands in the way. Tasks of one kind share a table. */
final class Places {

    private final BranchModel model;
    private final Map<Key, int[]> tables = new HashMap<>();

    private record Key(int crew, int halfDays, boolean inTheWeather, List<Integer> pools, List<Integer> pieces) {}

    Places(BranchModel model) {
        this.model = model;
    }

    /**
     * By the number of a crew's present slot: how many present slots a work takes that starts there; -1 where it cannot.
     */
    int[] lengths(Task task, int choice) {
        Key key = new Key(
                task.crews[choice],
                task.halfDays[choice],
                task.inTheWeather,
                Arrays.stream(task.pools).boxed().toList(),
                Arrays.stream(task.pieces).boxed().toList());
        return tables.computeIfAbsent(key, none -> lengths(model.crews[key.crew], task, choice));
    }

    private int[] lengths(CrewDays crew, Task task, int choice) {
        int[] scarce = scarceUpTo(task);
        int[] taken = new int[crew.present.length + 1];
        for (int index = 0; index < crew.present.length; index++) {
            taken[index + 1] = taken[index] + (crew.isTaken(index) ? 1 : 0);
        }
        int[] lengths = new int[crew.present.length];
        for (int index = 0; index < lengths.length; index++) {
            int length = crew.length(index, task.halfDays[choice], task.inTheWeather);
            boolean fits = length > 0
                    && taken[index + length] == taken[index]
                    && scarce[crew.present[index + length - 1] + 1] == scarce[crew.present[index]];
            lengths[index] = fits ? length : -1;
        }
        return lengths;
    }

    /** Of each slot: how many slots before it have too few pieces for the task. */
    private int[] scarceUpTo(Task task) {
        int[] scarce = new int[model.slots.size + 1];
        for (int slot = 0; slot < model.slots.size; slot++) {
            int missing = 0;
            for (int need = 0; need < task.pools.length; need++) {
                missing |= model.pools[task.pools[need]].free[slot] < task.pieces[need] ? 1 : 0;
            }
            scarce[slot + 1] = scarce[slot] + missing;
        }
        return scarce;
    }
}
