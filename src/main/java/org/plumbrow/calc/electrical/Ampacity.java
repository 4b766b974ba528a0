package org.plumbrow.calc.electrical;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a conductor may carry where it lies. Sources, as commonly reprinted: NEC Table 310.15(B)(1) (ambient), Table
 * 310.15(C)(1) (bundling), 310.15(B)(2) (raceways close to a roof, edition 2017 on), 240.4(D) (small conductors). Between
 * two rows of ambient the hotter one counts.
 */
public final class Ampacity {

    /** Added to the ambient of a raceway less than 7/8 in above a roof, in kelvin (NEC 310.15(B)(2), from memory). */
    public static final double ROOF_ADDER_K = 33;

    /** Upper end of each row of ambient, °C; the factors of the 60, 75 and 90 °C columns; 0 where not allowed. */
    private static final double[][] AMBIENT = {
        {10, 1.29, 1.20, 1.15},
        {15, 1.22, 1.15, 1.12},
        {20, 1.15, 1.11, 1.08},
        {25, 1.08, 1.05, 1.04},
        {30, 1.00, 1.00, 1.00},
        {35, 0.91, 0.94, 0.96},
        {40, 0.82, 0.88, 0.91},
        {45, 0.71, 0.82, 0.87},
        {50, 0.58, 0.75, 0.82},
        {55, 0.41, 0.67, 0.76},
        {60, 0, 0.58, 0.71},
        {65, 0, 0.47, 0.65},
        {70, 0, 0.33, 0.58},
        {75, 0, 0, 0.50},
        {80, 0, 0, 0.41},
        {85, 0, 0, 0.29}
    };

    private Ampacity() {}

    /** @return 0 where that insulation may not be used at all at such an ambient */
    public static double ambientFactor(double ambientC, TemperatureRating column) {
        for (double[] row : AMBIENT) {
            if (ambientC <= row[0]) {
                return row[1 + column.ordinal()];
            }
        }
        return 0;
    }

    /** @param conductors that carry current in one raceway or bundle; a neutral that carries unbalance only is not counted */
    public static double bundlingFactor(int conductors) {
        if (conductors <= 3) {
            return 1;
        }
        if (conductors <= 6) {
            return 0.80;
        }
        if (conductors <= 9) {
            return 0.70;
        }
        if (conductors <= 20) {
            return 0.50;
        }
        return conductors <= 30 ? 0.45 : conductors <= 40 ? 0.40 : 0.35;
    }

    /** The largest overcurrent device for a small conductor, amperes; empty for all others. */
    public static OptionalInt smallConductorMostA(ConductorSize size, ConductorMaterial material) {
        return switch (size) {
            case AWG_14 -> material == ConductorMaterial.COPPER ? OptionalInt.of(15) : OptionalInt.empty();
            case AWG_12 -> OptionalInt.of(material == ConductorMaterial.COPPER ? 20 : 15);
            case AWG_10 -> OptionalInt.of(material == ConductorMaterial.COPPER ? 30 : 25);
            default -> OptionalInt.empty();
        };
    }

    /**
     * Under the conditions of use: the 90 °C column times both factors, but never more than the terminals' column.
     *
     * @return empty when there is no such conductor
     */
    public static OptionalDouble corrected(
            ConductorSize size,
            ConductorMaterial material,
            TemperatureRating terminals,
            double ambientC,
            int conductors) {
        OptionalDouble start = size.ampacity(material, TemperatureRating.C90);
        OptionalDouble atTerminals = size.ampacity(material, terminals);
        if (start.isEmpty() || atTerminals.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                Math.min(conditionsOfUse(start.getAsDouble(), ambientC, conductors), atTerminals.getAsDouble()));
    }

    /** @param amperes of the 90 °C column */
    static double conditionsOfUse(double amperes, double ambientC, int conductors) {
        return amperes * ambientFactor(ambientC, TemperatureRating.C90) * bundlingFactor(conductors);
    }
}
