package org.plumbrow.calc.electrical;

/** Currents of strings. Source: NEC 690.8(A), 690.8(B), 690.9(A), as commonly reprinted. */
public final class StringCurrent {

    /** Sun above standard conditions. */
    public static final double IRRADIANCE = 1.25;

    private StringCurrent() {}

    /** The maximum current of strings in parallel: Isc × 1.25. */
    public static double maximumA(double iscA, int strings) {
        return iscA * strings * IRRADIANCE;
    }

    /** What conductor and device count for, before correction: Isc × 1.25 × 1.25. */
    public static double deviceA(double iscA, int strings) {
        return maximumA(iscA, strings) * Overcurrent.CONTINUOUS;
    }

    /** What all other strings of an input can feed into a faulted one: (n − 1) × Isc × 1.25. */
    public static double feedIntoFaultA(double iscA, int strings) {
        return maximumA(iscA, strings - 1);
    }

    /** Whether each string needs a fuse: the others can feed it more than its modules bear. */
    public static boolean needsFuses(double iscA, int strings, double maxSeriesFuseA) {
        return feedIntoFaultA(iscA, strings) > maxSeriesFuseA;
    }

    /** Output current of an inverter. @param phases 1 or 3 */
    public static double inverterA(double kwAc, double volts, int phases) {
        return kwAc * 1000 / (phases == 3 ? Math.sqrt(3) * volts : volts);
    }
}
