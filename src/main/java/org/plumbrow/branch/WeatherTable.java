package org.plumbrow.branch;

import java.time.Month;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/** Half-days that rain, snow and mud take in a month, by family of work; a family without a row loses none. */
public record WeatherTable(Map<WeatherFamily, Row> rows) {

    /** @param lostHalfDays January to December */
    public record Row(List<Double> lostHalfDays, long version) {
        private static final Row NONE = new Row(Collections.nCopies(12, 0.0), 0);
    }

    /** No more than this share is ever planned as lost; the core's limit. */
    private static final double MOST = 0.9;

    private static final double WEEKS_A_MONTH = 365.25 / 7 / 12;

    public double lostHalfDays(WeatherFamily family, Month month) {
        return row(family).lostHalfDays.get(month.ordinal());
    }

    public long version(WeatherFamily family) {
        return row(family).version;
    }

    private Row row(WeatherFamily family) {
        return rows.getOrDefault(family, Row.NONE);
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

    /** One share for all work outdoors: the mean of what weather takes from ground, structure and roof work. */
    public double lostShareOutdoors(Month month, Weekdays working) {
        return (lostShare(WeatherFamily.GROUND, month, working)
                        + lostShare(WeatherFamily.STRUCTURE, month, working)
                        + lostShare(WeatherFamily.ROOF, month, working))
                / 3;
    }
}
