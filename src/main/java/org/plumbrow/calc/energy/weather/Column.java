package org.plumbrow.calc.energy.weather;

import org.plumbrow.calc.Range;

/** What is taken from each row, with what a thermometer, a pyranometer or a wind cup can show. */
enum Column {
    GHI("global horizontal radiation", new Range(-5, 1700, "W/m2")),
    DNI("direct normal radiation", new Range(-5, 1500, "W/m2")),
    DHI("diffuse horizontal radiation", new Range(-5, 1200, "W/m2")),
    AIR("air temperature", new Range(-60, 60, "degC")),
    HUMIDITY("relative humidity", new Range(0, 110, "%")),
    WIND("wind speed", new Range(0, 75, "m/s"));

    static final int COUNT = values().length;

    private final String words;
    private final Range range;

    Column(String words, Range range) {
        this.words = words;
        this.range = range;
    }

    String words() {
        return words;
    }

    Range range() {
        return range;
    }

    boolean isRadiation() {
        return ordinal() <= DHI.ordinal();
    }
}
