package org.plumbrow.calc.electrical;

/**
 * Voltage and least resistance of the insulation test of a DC circuit. Source: IEC 62446-1 (250, 500, 1000 V and 1 MΩ as
 * reprinted; 0.5 MΩ and the 1500 V step from memory of the 2016 edition).
 *
 * @param testV DC
 * @param leastMohm between a conductor and earth
 */
public record InsulationTest(int testV, double leastMohm) {

    /** @param vocStcV of the string at 25 °C; a quarter is added */
    public static InsulationTest ofString(double vocStcV) {
        double volts = 1.25 * vocStcV;
        if (volts < 120) {
            return new InsulationTest(250, 0.5);
        }
        if (volts <= 500) {
            return new InsulationTest(500, 1);
        }
        return new InsulationTest(volts <= 1000 ? 1000 : 1500, 1);
    }
}
