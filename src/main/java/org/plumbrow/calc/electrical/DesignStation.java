package org.plumbrow.calc.electrical;

/**
 * Design temperatures of a weather station, °C: a start where no newer data set is at hand. Source: ASHRAE data set of 2001,
 * Minnesota; newer editions differ by a degree or two.
 */
public enum DesignStation {
    ALEXANDRIA("Alexandria", -29.0, -32.1, 2.5, 35.5, 28.3),
    BRAINERD("Brainerd", -31.1, -34.3, 3.8, 34.8, 27.2),
    DULUTH("Duluth", -29.2, -33.6, 2.6, 32.1, 25.6),
    HIBBING("Hibbing", -31.8, -36.7, 2.6, 33.1, 25.6),
    INTERNATIONAL_FALLS("International Falls", -33.6, -38.3, 2.1, 33.1, 26.7),
    MINNEAPOLIS_ST_PAUL("Minneapolis-St Paul", -26.5, -30.2, 3.0, 35.8, 29.4),
    REDWOOD_FALLS("Redwood Falls", -27.1, -29.9, 2.9, 37.1, 30.0),
    ROCHESTER("Rochester", -27.3, -30.7, 2.9, 34.2, 27.8),
    SAINT_CLOUD("Saint Cloud", -28.7, -32.7, 3.1, 34.9, 29.4),
    TOFTE("Tofte", -23.1, -28.1, 2.7, 30.1, 21.7);

    private final String words;
    private final double heating996C;
    private final double meanExtremeMinC;
    private final double deviationOfMinK;
    private final double meanExtremeMaxC;
    private final double cooling2C;

    DesignStation(
            String words,
            double heating996C,
            double meanExtremeMinC,
            double deviationOfMinK,
            double meanExtremeMaxC,
            double cooling2C) {
        this.words = words;
        this.heating996C = heating996C;
        this.meanExtremeMinC = meanExtremeMinC;
        this.deviationOfMinK = deviationOfMinK;
        this.meanExtremeMaxC = meanExtremeMaxC;
        this.cooling2C = cooling2C;
    }

    public String words() {
        return words;
    }

    public double heating996C() {
        return heating996C;
    }

    /** For the voltage in the cold. */
    public double meanExtremeMinC() {
        return meanExtremeMinC;
    }

    public double deviationOfMinK() {
        return deviationOfMinK;
    }

    public double meanExtremeMaxC() {
        return meanExtremeMaxC;
    }

    /** For the voltage in the heat and for conductors. */
    public double cooling2C() {
        return cooling2C;
    }
}
