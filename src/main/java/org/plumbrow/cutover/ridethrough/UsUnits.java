package org.plumbrow.cutover.ridethrough;

/** What people write in feet, pounds, gallons and degrees Fahrenheit, as the balances take it. Factors are exact. */
final class UsUnits {

    static final double M = 0.3048;
    static final double M2 = M * M;
    static final double M3 = M * M * M;
    static final double KG = 0.45359237;
    static final double WATER_KG_PER_GAL = 3.785411784;
    /** W/(m2 K) of R 1, one h ft2 degF/Btu. */
    private static final double U_OF_R1 = 5.678263;

    private UsUnits() {}

    static double degC(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    static double fahrenheit(double degC) {
        return degC * 1.8 + 32;
    }

    static double kelvin(double fahrenheitDifference) {
        return fahrenheitDifference / 1.8;
    }

    static double uOfR(double r) {
        return U_OF_R1 / r;
    }
}
