package org.plumbrow.branch;

import java.time.Month;
import java.util.Map;

/** Half-days that rain, snow and mud take in a month, by family of work; what is not in the table loses none. */
public record WeatherTable(Map<WeatherFamily, Map<Month, Double>> lostHalfDays) {

    /** No more than this share is ever planned as lost; the core's limit. */
    private static final double MOST = 0.9;

    private static final double WEEKS_A_MONTH = 365.25 / 7 / 12;

    public double lostHalfDays(WeatherFamily family, Month month) {
        return lostHalfDays.getOrDefault(family, Map.of()).getOrDefault(month, 0.0);
    }

    /**
     * Share of the working half-days that is lost, 0 to 0.9: lost ÷ (2 × working weekdays × 4.35 weeks a month).
     *
     * @param working the branch's weekdays
     */
    public double lostShare(WeatherFamily family, Month month, Weekdays working) {
        double halfDaysAMonth = 2 * working.days().size() * WEEKS_A_MONTH;
        return Math.min(MOST, lostHalfDays(family, month) / halfDaysAMonth);
    }
}
