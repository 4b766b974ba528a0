package org.plumbrow.calc.planning.bounds;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.calc.planning.search.BranchModel;

/** Crews that may do the same works, whatever time they take: which of them does one hardly matters. */
final class LikeCrews {

    private LikeCrews() {}

    static List<int[]> of(BranchModel model) {
        BitSet[] works = new BitSet[model.crews.length];
        for (int crew = 0; crew < works.length; crew++) {
            works[crew] = new BitSet(model.size());
        }
        for (int number = 0; number < model.size(); number++) {
            for (int crew : model.tasks[number].crews) {
                works[crew].set(number);
            }
        }
        Map<BitSet, List<Integer>> alike = new LinkedHashMap<>();
        for (int crew = 0; crew < works.length; crew++) {
            alike.computeIfAbsent(works[crew], none -> new ArrayList<>()).add(crew);
        }
        return lists(alike.values().stream().toList());
    }

    static List<int[]> eachAlone(BranchModel model) {
        List<List<Integer>> alone = new ArrayList<>();
        for (int crew = 0; crew < model.crews.length; crew++) {
            alone.add(List.of(crew));
        }
        return lists(alone);
    }

    private static List<int[]> lists(List<List<Integer>> crews) {
        return crews.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toList();
    }
}
