package org.plumbrow.calc.outage.ranking;

import java.util.Locale;
import org.plumbrow.calc.outage.MinuteWords;

/** A factor's figures as people of the trade read them: hours and minutes, degrees Fahrenheit, miles an hour. */
final class FactorWords {

    /** A limit so near to a whole one is that: 4.4 degC is the 40 °F of the law of milk. */
    private static final double WHOLE = 0.09;

    private static final double FAHRENHEIT_PER_K = 1.8;
    private static final double MPH_PER_MPS = 2.23694;

    private FactorWords() {}

    static String level(double value, String unit) {
        return switch (unit) {
            case "min" -> MinuteWords.of(value);
            case "degC" -> figure(fahrenheit(value)) + " °F";
            case "m/s" -> figure(value * MPH_PER_MPS) + " mph";
            case WeatherRules.CHANCE -> figure(value) + " " + unit;
            case WeatherRules.OF_HOURS -> "too much in " + figure(value) + " " + unit;
            default -> figure(value);
        };
    }

    static String limit(double value, String unit) {
        return switch (unit) {
            case "degC" -> figure(whole(fahrenheit(value))) + " °F";
            case WeatherRules.CHANCE, WeatherRules.OF_HOURS -> figure(value) + " %";
            default -> level(value, unit);
        };
    }

    static String difference(double value, String unit) {
        return unit.equals("degC") ? figure(value * FAHRENHEIT_PER_K) + " °F" : limit(value, unit);
    }

    private static double fahrenheit(double degC) {
        return degC * FAHRENHEIT_PER_K + 32;
    }

    private static double whole(double limit) {
        return Math.abs(limit - Math.rint(limit)) < WHOLE ? Math.rint(limit) : limit;
    }

    private static String figure(double value) {
        String digits = value == Math.rint(value) ? "%,.0f" : "%,.1f";
        return String.format(Locale.US, digits, value).replace('-', '−');
    }
}
