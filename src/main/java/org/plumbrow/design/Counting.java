package org.plumbrow.design;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;

/** Counts what a design says there is to build: for its bill of quantities and for durations. Pure. */
public final class Counting {

    private static final String BORED = "UNDER_STREETS_AND_DRIVEWAYS";

    private Counting() {}

    static DrawnQuantities of(DesignFacts design) {
        boolean buried = design.runs().stream().anyMatch(run -> run.coverIn() != null);
        return new DrawnQuantities(
                design.revision() == null ? "" : design.revision(),
                arrays(design),
                design.inverters().size(),
                design.kwAc(),
                buried ? trenchFt(design) : null,
                buried ? boreFt(design) : null);
    }

    private static List<DrawnQuantities.OfArray> arrays(DesignFacts design) {
        Map<String, Integer> posts = posts(design);
        return design.arrays().stream()
                .filter(array -> array.modules() > 0)
                .map(array -> new DrawnQuantities.OfArray(
                        array.mark(),
                        array.mounting(),
                        array.kwDc(),
                        array.modules(),
                        strings(design, array),
                        posts.get(array.mark())))
                .toList();
    }

    private static int strings(DesignFacts design, PvArray array) {
        return (int) design.strings().stream()
                .filter(string -> string.array().equals(array.mark()))
                .count();
    }

    /** All posts, shared out by modules so that none is lost in rounding. */
    private static Map<String, Integer> posts(DesignFacts design) {
        Integer all = allPosts(design.racking());
        List<PvArray> onGround = new ArrayList<>(design.arrays());
        onGround.removeIf(array -> array.mounting() != Mounting.GROUND || array.modules() == 0);
        Map<String, Integer> shared = new HashMap<>();
        if (all == null) {
            return shared;
        }
        int modules = onGround.stream().mapToInt(PvArray::modules).sum();
        int before = 0;
        long given = 0;
        for (PvArray array : onGround) {
            before += array.modules();
            long until = Math.round((double) all * before / modules);
            shared.put(array.mark(), (int) (until - given));
            given = until;
        }
        return shared;
    }

    private static @Nullable Integer allPosts(@Nullable Racking racking) {
        return racking == null || racking.posts() == null || racking.posts() == 0 ? null : racking.posts();
    }

    /** Buried runs beside one another share a trench: those with the same two ends count once. */
    public static double trenchFt(DesignFacts design) {
        return way(design, false);
    }

    /** What lies under a street or a driveway is bored. */
    public static double boreFt(DesignFacts design) {
        return way(design, true);
    }

    private static double way(DesignFacts design, boolean bored) {
        Map<String, Double> ways = new HashMap<>();
        for (Run run : design.runs()) {
            if (run.coverIn() != null && bored == BORED.equals(run.under())) {
                ways.merge(run.from() + " " + run.to(), run.lengthFt(), Math::max);
            }
        }
        return ways.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** How often a run is built: the one drawn for one string stands for all of its array that have no run of their own. */
    public static long times(DesignFacts design, Run run) {
        if (run.flow() != Flow.DC_STRING) {
            return 1;
        }
        return design.strings().stream()
                .filter(string -> string.mark().equals(run.from()))
                .findFirst()
                .map(first -> design.strings().stream()
                        .filter(string -> string.array().equals(first.array()))
                        .filter(string -> string.mark().equals(run.from()) || !hasOwnRun(design, string))
                        .count())
                .orElse(1L);
    }

    private static boolean hasOwnRun(DesignFacts design, PvString string) {
        return design.runs().stream().anyMatch(run -> run.from().equals(string.mark()));
    }
}
