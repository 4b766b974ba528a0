package org.plumbrow.calc.electrical;

/**
 * Voltage lost along a run: 2 L R I for two wires, √3 L I (R cosφ + X sinφ) for three phases; L one way. Resistances: NEC
 * chapter 9, Table 8 for direct current, Table 9 for alternating current.
 */
public final class VoltageDrop {

    /** House limits, percent (common practice; the code's notes suggest 3 % of a branch and 5 % in all). */
    public static final double MOST_PERCENT = 2;

    private static final double FEET_PER_KFT = 1000;

    private VoltageDrop() {}

    /** @param percent of the voltage at which the run begins */
    public record Result(double volts, double percent, double ohmsPerKft) {}

    /** Direct current. @param volts between the two wires. @throws IllegalArgumentException without a row for the size */
    public static Result dc(
            ConductorSize size, ConductorMaterial material, double lengthFt, double amperes, double volts) {
        double ohms = size.dcOhmsPerKft(material).orElseThrow(() -> noRow(size, material));
        return result(2 * lengthFt / FEET_PER_KFT * ohms * amperes, volts, ohms);
    }

    /**
     * Alternating current.
     *
     * @param phases 1 or 3
     * @param volts line to line
     * @param powerFactor 0 to 1; an inverter runs at 1 unless told otherwise
     */
    public static Result ac(
            int phases,
            ConductorSize size,
            ConductorMaterial material,
            Raceway raceway,
            double lengthFt,
            double amperes,
            double volts,
            double powerFactor) {
        double resistance = size.acOhmsPerKft(material).orElseThrow(() -> noRow(size, material));
        double reactance = size.reactanceOhmsPerKft(raceway).orElseThrow(() -> noRow(size, material));
        double ohms = resistance * powerFactor + reactance * Math.sqrt(1 - powerFactor * powerFactor);
        double wires = phases == 3 ? Math.sqrt(3) : 2;
        return result(wires * lengthFt / FEET_PER_KFT * ohms * amperes, volts, ohms);
    }

    private static Result result(double drop, double volts, double ohms) {
        return new Result(drop, 100 * drop / volts, ohms);
    }

    private static IllegalArgumentException noRow(ConductorSize size, ConductorMaterial material) {
        return new IllegalArgumentException("the table has no " + size.words() + " " + material.words());
    }
}
