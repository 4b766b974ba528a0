package org.plumbrow.calc.ridethrough;

/**
 * A value that must not be passed, and who says so.
 *
 * @param source where the value comes from; shown beside it
 */
public record Limit(Kind kind, double value, String source) {

    /** What is watched, in which unit, and in which direction it is passed. */
    public enum Kind {
        HEAT("air temperature", "degC", true),
        COLD("air temperature, cold", "degC", false),
        CO2("carbon dioxide", "%", true),
        THI("temperature-humidity index", "", true),
        PRODUCT("product temperature", "degC", true),
        FROST("air temperature, frost", "degC", false);

        private final String words;
        private final String unit;
        private final boolean upward;

        Kind(String words, String unit, boolean upward) {
            this.words = words;
            this.unit = unit;
            this.upward = upward;
        }

        public String words() {
            return words;
        }

        public String unit() {
            return unit;
        }

        /** Is the limit passed by rising? */
        public boolean isUpward() {
            return upward;
        }
    }

    public Limit {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("limit of " + kind.words + ": " + value);
        }
        if (source.isBlank()) {
            throw new IllegalArgumentException("limit of " + kind.words + " names no source");
        }
    }

    public boolean isPassedBy(double measured) {
        return kind.upward ? measured >= value : measured <= value;
    }
}
