package org.plumbrow.calc.electrical;

import org.jspecify.annotations.Nullable;

/**
 * Strings that end on one input of an inverter: alike in length.
 *
 * @param name as people call it, "INV 1 input 2"
 * @param modules in series
 * @param strings in parallel on the input
 * @param fuseA in each string; null without fuses
 * @param lowC lowest expected air temperature (mean annual extreme minimum)
 * @param highC 2 % high air temperature
 * @param flushOnRoof whether little air flows behind the modules
 */
public record StringCase(
        String name,
        Module module,
        Input input,
        int modules,
        int strings,
        @Nullable Double fuseA,
        double lowC,
        double highC,
        StringVoltage.Place place,
        boolean flushOnRoof) {

    /**
     * A module's data sheet.
     *
     * @param vocPercentPerK below 0; null when the sheet is silent: then the table counts
     * @param vmpPercentPerK below 0; null when the sheet is silent: then the one of power counts, on the low side
     */
    public record Module(
            double vocV,
            double vmpV,
            double iscA,
            double impA,
            @Nullable Double vocPercentPerK,
            @Nullable Double vmpPercentPerK,
            double pmaxPercentPerK,
            double maxSeriesFuseA,
            double maxSystemV) {}

    /** One MPPT input's data sheet. */
    public record Input(
            double maxDcV,
            double mpptFromV,
            double mpptToV,
            double fullFromV,
            double fullToV,
            double maxA,
            double shortCircuitA,
            int stringsLanded) {}

    /** Of one module in the cold, V. */
    public double vocColdV() {
        return module.vocV() * coldFactor();
    }

    /** Whether anything says how the voltage rises in such a cold: the table ends at -40 °C. */
    public boolean isKnownInTheCold() {
        return module.vocPercentPerK() != null || lowC >= StringVoltage.TABLE_ENDS_C;
    }

    /** @throws IllegalArgumentException below -40 °C when the table has to be used */
    public double coldFactor() {
        return module.vocPercentPerK() == null
                ? StringVoltage.factorByTable(lowC)
                : StringVoltage.factorByCoefficient(module.vocPercentPerK(), lowC);
    }

    public double hotCellC() {
        return highC + StringVoltage.cellAboveAmbientK(flushOnRoof);
    }

    /** Of one module in the heat, V. */
    public double vmpHotV() {
        double percent = module.vmpPercentPerK() == null ? module.pmaxPercentPerK() : module.vmpPercentPerK();
        return module.vmpV() * StringVoltage.factorByCoefficient(percent, hotCellC());
    }

    /** The least of inverter, module and place. */
    public double limitV() {
        return Math.min(Math.min(input.maxDcV(), module.maxSystemV()), place.mostV());
    }

    public int mostInSeries() {
        return StringVoltage.mostInSeries(limitV(), vocColdV());
    }

    public int leastInSeries() {
        return StringVoltage.leastInSeries(input.mpptFromV(), vmpHotV());
    }

    public int leastForFullPower() {
        return StringVoltage.leastInSeries(input.fullFromV(), vmpHotV());
    }
}
