package org.plumbrow.calc.electrical;

/** Short-circuit current at a transformer's terminals with an infinite source behind it: kVA × 1000 / (√3 V z). */
public final class FaultCurrent {

    private FaultCurrent() {}

    /**
     * @param phases 1 or 3
     * @param volts line to line
     * @param impedancePercent from the plate
     * @return amperes; the utility's own figure counts before this one
     */
    public static double atTransformerA(double kva, double volts, int phases, double impedancePercent) {
        return kva * 1000 / ((phases == 3 ? Math.sqrt(3) : 1) * volts * impedancePercent / 100);
    }
}
