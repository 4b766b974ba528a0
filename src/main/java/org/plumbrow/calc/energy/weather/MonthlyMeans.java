package org.plumbrow.calc.energy.weather;

import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.sun.HourOfYear;
import org.plumbrow.calc.energy.sun.Place;

/**
 * What is known of a place without an hourly file: twelve means.
 *
 * @param place where
 * @param ghiKwhPerM2Day {@code double[12]}, mean daily global radiation on the horizontal, kWh/m2, 0 to 10
 * @param airC {@code double[12]}, mean temperature, degC, -50 to 45
 * @param windMPerS {@code double[12]}, mean wind speed, m/s, 0 to 20
 */
public record MonthlyMeans(Place place, double[] ghiKwhPerM2Day, double[] airC, double[] windMPerS) {

    public static final Range GHI = new Range(0, 10, "kWh/m2 a day");
    public static final Range AIR = new Range(-50, 45, "degC");
    public static final Range WIND = new Range(0, 20, "m/s");

    /** @throws Range.OutOfRange if a mean is outside its range or not a number */
    public MonthlyMeans {
        ghiKwhPerM2Day = checked("mean daily radiation", ghiKwhPerM2Day, GHI);
        airC = checked("mean temperature", airC, AIR);
        windMPerS = checked("mean wind speed", windMPerS, WIND);
    }

    private static double[] checked(String what, double[] means, Range range) {
        if (means.length != HourOfYear.MONTHS) {
            throw new IllegalArgumentException(means.length + " means in place of 12");
        }
        for (int month = 0; month < HourOfYear.MONTHS; month++) {
            range.check(what + " of month " + (month + 1), means[month]);
        }
        return means.clone();
    }

    /**
     * A typical year made from these means.
     *
     * @throws Range.OutOfRange if a month has more radiation than the sun sends there
     */
    public WeatherYear typicalYear() {
        return new MadeYear(this).year();
    }
}
