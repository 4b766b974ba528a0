package org.plumbrow.calc.planning.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntervalVar;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Task;

/** What tasks share: each crew does one thing at a time, each kind of equipment has so many pieces. */
final class SharedUse {

    private final PieceModel from;
    private final CpModel cp;
    private final BranchModel model;
    private final Piece piece;
    private final boolean[][] busy;
    private final int[][] left;

    SharedUse(PieceModel from) {
        this.from = from;
        cp = from.cp;
        model = from.model;
        piece = from.piece;
        busy = new boolean[model.crews.length][model.slots.size];
        left = Arrays.stream(model.pools).map(pool -> pool.free.clone()).toArray(int[][]::new);
        for (int crew = 0; crew < busy.length; crew++) {
            int[] present = model.crews[crew].present;
            for (int index = 0; index < present.length; index++) {
                busy[crew][present[index]] = model.crews[crew].isTaken(index);
            }
        }
        for (int number = 0; number < model.size(); number++) {
            if (!piece.free()[number] && piece.now().crew[number] >= 0) {
                occupy(number);
            }
        }
    }

    private void occupy(int number) {
        Task task = model.tasks[number];
        int start = piece.now().start[number];
        int finish = piece.now().finish[number];
        Arrays.fill(busy[piece.now().crew[number]], start, finish + 1, true);
        for (int need = 0; need < task.pools.length; need++) {
            for (int slot = start; slot <= finish; slot++) {
                left[task.pools[need]][slot] -= task.pieces[need];
            }
        }
    }

    void limit() {
        Map<Integer, List<IntervalVar>> byCrew = new LinkedHashMap<>();
        for (Moves moved : from.moves.values()) {
            for (Moves.ByCrew choice : moved.choices) {
                byCrew.computeIfAbsent(choice.crew(), none -> new ArrayList<>()).addAll(choice.runs());
            }
        }
        byCrew.forEach((crew, runs) -> {
            runs.addAll(fixed(busy[crew]));
            cp.addNoOverlap(runs);
        });
        for (int pool = 0; pool < model.pools.length; pool++) {
            limitPool(pool);
        }
        limitCrewSets();
    }

    /** Runs of busy slots as fixed stays, from the first slot that a free task can reach. */
    private List<IntervalVar> fixed(boolean[] taken) {
        List<IntervalVar> runs = new ArrayList<>();
        int slot = model.slots.today;
        while (slot < taken.length) {
            int end = slot;
            while (end < taken.length && taken[end]) {
                end++;
            }
            if (end > slot) {
                runs.add(cp.newFixedInterval(slot, end - slot, "b"));
            }
            slot = end + 1;
        }
        return runs;
    }

    private void limitPool(int pool) {
        List<Moves> users = new ArrayList<>();
        List<Integer> pieces = new ArrayList<>();
        for (Moves moved : from.moves.values()) {
            Task task = model.tasks[moved.number];
            for (int need = 0; need < task.pools.length; need++) {
                if (task.pools[need] == pool) {
                    users.add(moved);
                    pieces.add(task.pieces[need]);
                }
            }
        }
        if (users.isEmpty()) {
            return;
        }
        int[] free = left[pool];
        int most = Math.max(0, Arrays.stream(free).max().orElse(0));
        CumulativeConstraint use = cp.addCumulative(most);
        for (int at = 0; at < users.size(); at++) {
            use.addDemand(Objects.requireNonNull(users.get(at).stay), pieces.get(at));
        }
        int slot = model.slots.today;
        while (slot < free.length) {
            int end = slot + 1;
            while (end < free.length && free[end] == free[slot]) {
                end++;
            }
            int missing = most - Math.max(0, free[slot]);
            if (missing > 0) {
                use.addDemand(cp.newFixedInterval(slot, end - slot, "f"), missing);
            }
            slot = end;
        }
    }

    /** Redundant, and what makes a bound: tasks that only these crews may do are never more at a time than crews. */
    private void limitCrewSets() {
        Map<List<Integer>, List<Moves>> bySet = new HashMap<>();
        for (Moves moved : from.moves.values()) {
            if (!moved.choices.isEmpty()) {
                List<Integer> set = Arrays.stream(model.tasks[moved.number].crews)
                        .boxed()
                        .sorted()
                        .toList();
                bySet.computeIfAbsent(set, none -> new ArrayList<>()).add(moved);
            }
        }
        for (List<Integer> set : bySet.keySet()) {
            if (set.size() > 1) {
                List<Moves> within = bySet.entrySet().stream()
                        .filter(other -> set.containsAll(other.getKey()))
                        .flatMap(other -> other.getValue().stream())
                        .collect(Collectors.toList());
                CumulativeConstraint together = cp.addCumulative(set.size());
                within.forEach(moved -> together.addDemand(Objects.requireNonNull(moved.stay), 1));
                for (int crew : set) {
                    fixed(busy[crew]).forEach(run -> together.addDemand(run, 1));
                }
            }
        }
    }
}
