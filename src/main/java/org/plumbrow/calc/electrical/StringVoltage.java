package org.plumbrow.calc.electrical;

/**
 * Voltage of modules in series in the cold and in the heat. Sources: NEC 690.7(A) with its table (as commonly reprinted),
 * 690.7 for the limits by place; the module's own coefficient counts where it is known. Temperatures in °C, coefficients
 * in percent a kelvin. Between two rows of the table the colder one counts.
 */
public final class StringVoltage {

    private static final double STC_C = 25;

    /** Lower end of each row of Table 690.7(A), °C, and its factor. */
    private static final double[][] COLD_FACTORS = {
        {20, 1.02},
        {15, 1.04},
        {10, 1.06},
        {5, 1.08},
        {0, 1.10},
        {-5, 1.12},
        {-10, 1.14},
        {-15, 1.16},
        {-20, 1.18},
        {-25, 1.20},
        {-30, 1.21},
        {-35, 1.23},
        {-40, 1.25}
    };

    /** Below this the table says nothing and the maker must be asked, °C. */
    public static final double TABLE_ENDS_C = -40;

    private StringVoltage() {}

    /** Where the conductors are: how high the voltage may be (NEC 690.7). */
    public enum Place {
        DWELLING(600, "on or in a one- or two-family dwelling"),
        OTHER_BUILDING(1000, "on or in another building"),
        GROUND(1500, "on the ground, not on a building, with equipment listed for it");

        private final int mostV;
        private final String words;

        Place(int mostV, String words) {
            this.mostV = mostV;
            this.words = words;
        }

        public int mostV() {
            return mostV;
        }

        public String words() {
            return words;
        }
    }

    /** 1 + coefficient × (cell − 25 °C). @param percentPerK below 0 for voltages */
    public static double factorByCoefficient(double percentPerK, double cellC) {
        return 1 + percentPerK / 100 * (cellC - STC_C);
    }

    /**
     * By Table 690.7(A), where the module's sheet gives no coefficient.
     *
     * @throws IllegalArgumentException below -40 °C, where the table ends and the maker must be asked
     */
    public static double factorByTable(double lowC) {
        for (double[] row : COLD_FACTORS) {
            if (lowC >= row[0]) {
                return row[1];
            }
        }
        throw new IllegalArgumentException("the table ends at -40 °C: " + lowC);
    }

    /** The most modules in series under a limit. @param vocColdV of one module */
    public static int mostInSeries(double limitV, double vocColdV) {
        return (int) Math.floor(limitV / vocColdV + 1e-9);
    }

    /** The fewest modules in series that reach a voltage in the heat. @param vmpHotV of one module */
    public static int leastInSeries(double leastV, double vmpHotV) {
        return (int) Math.ceil(leastV / vmpHotV - 1e-9);
    }

    /** Cell temperature in full sun: ambient plus this (common practice: ground 25 to 30, flush roof 35 to 40). */
    public static double cellAboveAmbientK(boolean flushOnRoof) {
        return flushOnRoof ? 35 : 30;
    }
}
