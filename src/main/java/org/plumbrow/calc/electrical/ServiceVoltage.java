package org.plumbrow.calc.electrical;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.electrical.Service.Band;
import org.plumbrow.calc.electrical.Service.Limits;
import org.plumbrow.calc.electrical.Service.Pair;

/**
 * Judges one set of voltage readings of a service, in this order: a leg near 208 V whose legs do not add up to line to
 * line is a high leg; legs of a 120/240 V service that differ by more than 10 V although line to line is right are a
 * possible open neutral; then Range A and B of ANSI C84.1, limits included.
 * <p>Unbalance = largest deviation from the mean, over the mean (ANSI C84.1 recommends at most 3 % without load).
 */
public final class ServiceVoltage {

    /** What a voltmeter at a low-voltage service can read. */
    public static final Range VOLTS = new Range(0, 1000, "V");

    private static final double MOST_DIFFERENCE_OF_LEGS_V = 10;
    private static final double HIGH_LEG_TOLERANCE = 0.05;

    private ServiceVoltage() {}

    /** One reading, where it lies. */
    public record Judged(Pair pair, double volts, Band band) {
        /** "Leg B to neutral: 131.0 V is outside 114 to 126 V." */
        public String sentence() {
            String read = "%s: %.1f V".formatted(pair.words(), volts);
            var limits = pair.limits();
            return switch (band) {
                case A -> "%s lies within %.0f to %.0f V.".formatted(read, limits.aLeastV(), limits.aMostV());
                case B ->
                    "%s is outside %.0f to %.0f V, within the wider %.0f to %.0f V."
                            .formatted(read, limits.aLeastV(), limits.aMostV(), limits.bLeastV(), limits.bMostV());
                case OUTSIDE -> "%s is outside %.0f to %.0f V.".formatted(read, limits.bLeastV(), limits.bMostV());
            };
        }
    }

    /**
     * What a utility or a state allows instead of ANSI C84.1; a leg's limits are not given where its service has no neutral.
     *
     * @param line from line to line
     */
    public record OwnLimits(Optional<Limits> toNeutral, Limits line) {
        Pair in(Pair pair) {
            Limits limits = pair.to().equals("N") ? toNeutral.orElse(pair.limits()) : line;
            return new Pair(pair.from(), pair.to(), limits);
        }

        /** One range, neither narrow nor wide. */
        public static Limits between(double leastV, double mostV) {
            return new Limits(leastV, mostV, leastV, mostV);
        }
    }

    /** What a whole set says. */
    public record Result(
            List<Judged> readings, List<Pair> missing, Optional<String> warning, Optional<Double> unbalancePercent) {

        public boolean isComplete() {
            return missing.isEmpty();
        }

        /** The worst band of the set; A when nothing was read. */
        public Band worst() {
            return readings.stream()
                    .map(Judged::band)
                    .max(Comparator.naturalOrder())
                    .orElse(Band.A);
        }
    }

    /**
     * @param volts by the pair's code ("A-N", "A-B"); 0 to 1000 V
     * @throws Range.OutOfRange if a value cannot be a reading
     */
    public static Result judge(Service service, Map<String, Double> volts) {
        return judge(service, volts, Optional.empty());
    }

    /** @param own limits of the utility or the state, which take the place of ANSI C84.1's two ranges */
    public static Result judge(Service service, Map<String, Double> volts, Optional<OwnLimits> own) {
        List<Judged> judged = new ArrayList<>();
        List<Pair> missing = new ArrayList<>();
        for (Pair pair : service.pairs()) {
            Double read = volts.get(pair.code());
            if (read == null) {
                missing.add(pair);
            } else {
                Pair limited = own.map(table -> table.in(pair)).orElse(pair);
                judged.add(new Judged(limited, read, limited.limits().band(VOLTS.check(pair.words(), read))));
            }
        }
        return new Result(judged, missing, warning(service, volts), unbalance(service, volts));
    }

    private static Optional<String> warning(Service service, Map<String, Double> volts) {
        return highLeg(service, volts).or(() -> openNeutral(service, volts));
    }

    private static Optional<String> highLeg(Service service, Map<String, Double> volts) {
        if (!service.isThreePhase() || service == Service.HIGH_LEG_240_120) {
            return Optional.empty();
        }
        return List.of("A", "B", "C").stream()
                .filter(leg -> isHigh(leg, volts))
                .findFirst()
                .map(leg -> "Leg " + leg + " reads as the high leg of a delta service. "
                        + "Check the kind of service before anything is connected to that leg.");
    }

    private static boolean isHigh(String leg, Map<String, Double> volts) {
        List<Double> others = List.of("A", "B", "C").stream()
                .filter(other -> !other.equals(leg))
                .map(other -> volts.get(other + "-N"))
                .filter(java.util.Objects::nonNull)
                .toList();
        Double own = volts.get(leg + "-N");
        if (own == null || others.size() < 2) {
            return false;
        }
        double expected = Math.sqrt(3) * (others.get(0) + others.get(1)) / 2;
        return expected > 0 && Math.abs(own - expected) <= HIGH_LEG_TOLERANCE * expected;
    }

    private static Optional<String> openNeutral(Service service, Map<String, Double> volts) {
        Double a = volts.get("A-N");
        Double b = volts.get("B-N");
        if (service != Service.SINGLE_PHASE_120_240
                || a == null
                || b == null
                || Math.abs(a - b) <= MOST_DIFFERENCE_OF_LEGS_V) {
            return Optional.empty();
        }
        return Optional.of(String.format(
                Locale.US,
                "The legs differ by %.0f V: the neutral may be open. Stop, and call the utility at once.",
                Math.abs(a - b)));
    }

    private static Optional<Double> unbalance(Service service, Map<String, Double> volts) {
        List<Double> read = service.pairs().stream()
                .filter(pair -> service.hasNeutral() == pair.to().equals("N"))
                .map(pair -> volts.get(pair.code()))
                .filter(java.util.Objects::nonNull)
                .toList();
        if (!service.isThreePhase() || service == Service.HIGH_LEG_240_120 || read.size() < 3) {
            return Optional.empty();
        }
        double mean = read.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        double deviation =
                read.stream().mapToDouble(v -> Math.abs(v - mean)).max().orElse(0);
        return mean > 0 ? Optional.of(100 * deviation / mean) : Optional.empty();
    }
}
