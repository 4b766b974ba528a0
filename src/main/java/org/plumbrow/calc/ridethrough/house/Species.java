package org.plumbrow.calc.ridethrough.house;

/**
 * How a kind of animal parts its heat between warming the air (sensible) and moistening it (latent), per heat producing
 * unit and at the level of the house.
 * <p>Total: 1000 + slope (20 - t) W; sensible: share of total - bend t^power W, never below 0; t in degC.
 * <p>Source: CIGR, 4th report of the working group on climatization of animal houses (2002), from memory, cross-checked
 * with measured layers (Chepete and others: 3.8 W/kg sensible at 24 to 27 degC). Turkeys take the broilers' split.
 */
public enum Species {
    CATTLE(4, 0.71, 0.407, 2, 1),
    PIGS(12, 0.62, 1.15e-7, 6, 5),
    BROILERS(20, 0.61, 0.228, 2, 2),
    LAYERS(20, 0.67, 9.8e-8, 6, 2),
    TURKEYS(20, 0.61, 0.228, 2, 2);

    private final double slope;
    private final double share;
    private final double bend;
    private final int power;
    private final double usualMassFactor;

    Species(double slope, double share, double bend, int power, double usualMassFactor) {
        this.slope = slope;
        this.share = share;
        this.bend = bend;
        this.power = power;
        this.usualMassFactor = usualMassFactor;
    }

    /** Total heat of one hpu, W. */
    public double totalW(double airC) {
        return Math.max(0, 1000 + slope * (20 - airC));
    }

    /** Heat of one hpu that warms the air, W. */
    public double sensibleW(double airC) {
        double square = airC * airC;
        double bent = bend * (power == 2 ? square : square * square * square);
        return Math.max(0, share * totalW(airC) - bent);
    }

    /** Heat of one hpu that leaves as water vapour, W. */
    public double latentW(double airC) {
        return totalW(airC) - sensibleW(airC);
    }

    /**
     * How many times the heat capacity of its air a house takes part with (litter, walls, animals' surface): 5 for pigs, 2
     * on litter and in cages, 1 for cattle and wherever it is not known. Calibrated on published statements only: 5 gives
     * heavy pigs their "faster than 1 degF a minute"; a trial with young pigs would need 20.
     */
    public double usualMassFactor() {
        return usualMassFactor;
    }
}
