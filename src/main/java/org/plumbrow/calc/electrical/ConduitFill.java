package org.plumbrow.calc.electrical;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** How full a conduit is. Sources, as commonly reprinted: NEC chapter 9, Tables 1, 4, 5 and note 4. */
public final class ConduitFill {

    private static final String[] TRADE_SIZES = {"1/2", "3/4", "1", "1-1/4", "1-1/2", "2", "2-1/2", "3", "4"};

    private static final Map<Raceway, double[]> AREA_IN2 = Map.of(
            Raceway.PVC_40, new double[] {0.285, 0.508, 0.832, 1.453, 1.986, 3.291, 4.695, 7.268, 12.554},
            Raceway.PVC_80, new double[] {0.217, 0.409, 0.688, 1.237, 1.711, 2.874, 4.119, 6.442, 11.258},
            Raceway.EMT, new double[] {0.304, 0.533, 0.864, 1.496, 2.036, 3.356, 5.858, 8.846, 14.753});

    private ConduitFill() {}

    /** So many alike conductors in a conduit. */
    public record Content(ConductorSize size, Insulation insulation, int count) {}

    public static List<String> tradeSizes() {
        return List.of(TRADE_SIZES);
    }

    /** Square inches inside; empty for a raceway or size without a row. */
    public static OptionalDouble areaIn2(Raceway raceway, String tradeSize) {
        return Optional.ofNullable(areas(raceway).get(tradeSize)).stream()
                .mapToDouble(Double::doubleValue)
                .findFirst();
    }

    private static Map<String, Double> areas(Raceway raceway) {
        double[] areas = AREA_IN2.get(raceway);
        if (areas == null) {
            return Map.of();
        }
        Map<String, Double> bySize = new LinkedHashMap<>();
        for (int i = 0; i < areas.length; i++) {
            bySize.put(TRADE_SIZES[i], areas[i]);
        }
        return Collections.unmodifiableMap(bySize);
    }

    /** Percent of the area that so many conductors may take. @param nipple at most 24 in long */
    public static int mostPercent(int conductors, boolean nipple) {
        if (nipple) {
            return 60;
        }
        return conductors == 1 ? 53 : conductors == 2 ? 31 : 40;
    }

    /** Percent of the area that is taken; empty where a size or the conduit has no row. */
    public static OptionalDouble percent(Raceway raceway, String tradeSize, List<Content> contents) {
        OptionalDouble area = areaIn2(raceway, tradeSize);
        double taken = contents.stream()
                .mapToDouble(content -> content.count()
                        * content.size().areaIn2(content.insulation()).orElse(Double.NaN))
                .sum();
        return area.isEmpty() || Double.isNaN(taken)
                ? OptionalDouble.empty()
                : OptionalDouble.of(100 * taken / area.getAsDouble());
    }

    /** The smallest trade size that takes them; empty when none does or none is known. */
    public static Optional<String> smallest(Raceway raceway, List<Content> contents) {
        int count = contents.stream().mapToInt(Content::count).sum();
        return areas(raceway).keySet().stream()
                .filter(size -> {
                    OptionalDouble percent = percent(raceway, size, contents);
                    return percent.isPresent() && percent.getAsDouble() <= mostPercent(count, false);
                })
                .findFirst();
    }
}
