package org.plumbrow.calc.energy;

import static org.plumbrow.calc.energy.sun.HourOfYear.MONTHS;

/** What one section makes, stage by stage and month by month, before its inverter. */
public final class SectionYield {

    private final ArraySection section;
    private final double[][] kwhPerKw;

    /** @param kwhPerKw {@code double[stages][12]} */
    SectionYield(ArraySection section, double[][] kwhPerKw) {
        this.section = section;
        this.kwhPerKw = kwhPerKw;
    }

    public ArraySection section() {
        return section;
    }

    /**
     * For each kW of rating; for the stages of light this is the irradiation in kWh/m2.
     *
     * @param month 1 to 12
     */
    public double kwhPerKw(Stage stage, int month) {
        return kwhPerKw[stage.ordinal()][month - 1];
    }

    /** Of the year. */
    public double kwhPerKw(Stage stage) {
        double sum = 0;
        for (int month = 1; month <= MONTHS; month++) {
            sum += kwhPerKw(stage, month);
        }
        return sum;
    }

    /** Of the year and the whole section. */
    public double kwh(Stage stage) {
        return section.kwDc() * kwhPerKw(stage);
    }
}
