package org.plumbrow.calc.electrical;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The kinds of low-voltage service met in the field, each with the pairs to read and the limits of each pair.
 * Source: ANSI C84.1, table 1, service voltage, in whole volts (the table's own rounding, not percentages); the high
 * leg's limits are 0.866 times those of line to line. A utility's or state's own table replaces these where it is set.
 */
public enum Service {
    SINGLE_PHASE_120_240(
            "120/240 V, single phase, 3 wires", false, List.of("A", "B"), Limits.LINE_120, Limits.LINE_240),
    WYE_208_120("208Y/120 V, three phases", true, List.of("A", "B", "C"), Limits.LINE_120, Limits.LINE_208),
    DELTA_240("240 V delta, three phases, 3 wires", true, List.of("A", "B", "C"), null, Limits.LINE_240),
    HIGH_LEG_240_120("240/120 V delta with a high leg", true, List.of("A", "B", "C"), Limits.LINE_120, Limits.LINE_240),
    WYE_480_277("480Y/277 V, three phases", true, List.of("A", "B", "C"), Limits.LINE_277, Limits.LINE_480),
    DELTA_480("480 V delta, three phases, 3 wires", true, List.of("A", "B", "C"), null, Limits.LINE_480);

    /** By custom the high leg is the B phase (orange). */
    private static final String HIGH_LEG = "B";

    private final String words;
    private final boolean threePhase;
    private final List<String> legs;
    private final @org.jspecify.annotations.Nullable Limits toNeutral;
    private final Limits lineToLine;

    Service(
            String words,
            boolean threePhase,
            List<String> legs,
            @org.jspecify.annotations.Nullable Limits toNeutral,
            Limits lineToLine) {
        this.words = words;
        this.threePhase = threePhase;
        this.legs = legs;
        this.toNeutral = toNeutral;
        this.lineToLine = lineToLine;
    }

    public String words() {
        return words;
    }

    public boolean isThreePhase() {
        return threePhase;
    }

    public boolean hasNeutral() {
        return toNeutral != null;
    }

    /** Nominal volts from line to line. */
    public int lineV() {
        return switch (this) {
            case WYE_208_120 -> 208;
            case SINGLE_PHASE_120_240, DELTA_240, HIGH_LEG_240_120 -> 240;
            case WYE_480_277, DELTA_480 -> 480;
        };
    }

    public Limits lineLimits() {
        return lineToLine;
    }

    /** Every pair that is read: each leg to neutral where there is one, then each pair of legs. */
    public List<Pair> pairs() {
        List<Pair> pairs = new ArrayList<>();
        if (toNeutral != null) {
            legs.forEach(leg -> pairs.add(new Pair(leg, "N", limitsToNeutral(leg))));
        }
        for (int first = 0; first < legs.size(); first++) {
            for (int second = first + 1; second < legs.size(); second++) {
                pairs.add(new Pair(legs.get(first), legs.get(second), lineToLine));
            }
        }
        return pairs;
    }

    public Optional<Pair> pair(String code) {
        return pairs().stream().filter(pair -> pair.code().equals(code)).findFirst();
    }

    private Limits limitsToNeutral(String leg) {
        return this == HIGH_LEG_240_120 && leg.equals(HIGH_LEG) ? Limits.HIGH_LEG : toNeutral;
    }

    /** Two conductors whose voltage is read: "A-N", "A-B". */
    public record Pair(String from, String to, Limits limits) {
        public String code() {
            return from + "-" + to;
        }

        public String words() {
            return to.equals("N") ? "Leg " + from + " to neutral" : "Leg " + from + " to leg " + to;
        }
    }

    /** Range A is where a service usually lies, Range B what is tolerated for a while; limits included, volts. */
    public record Limits(double aLeastV, double aMostV, double bLeastV, double bMostV) {
        static final Limits LINE_120 = new Limits(114, 126, 110, 127);
        static final Limits LINE_208 = new Limits(197, 218, 191, 220);
        static final Limits LINE_240 = new Limits(228, 252, 220, 254);
        static final Limits HIGH_LEG = new Limits(197, 218, 191, 220);
        static final Limits LINE_277 = new Limits(263, 291, 254, 293);
        static final Limits LINE_480 = new Limits(456, 504, 440, 508);

        public Band band(double volts) {
            if (volts >= aLeastV && volts <= aMostV) {
                return Band.A;
            }
            return volts >= bLeastV && volts <= bMostV ? Band.B : Band.OUTSIDE;
        }
    }

    /** Where a voltage lies: within Range A, only within Range B, outside both. */
    public enum Band {
        A,
        B,
        OUTSIDE
    }
}
