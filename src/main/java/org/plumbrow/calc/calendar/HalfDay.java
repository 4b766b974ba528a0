package org.plumbrow.calc.calendar;

import java.time.LocalDate;
import java.util.Comparator;

/** The smallest piece of a plan: a morning or an afternoon of one date, working or not. */
public record HalfDay(LocalDate date, Half half) implements Comparable<HalfDay> {

    private static final Comparator<HalfDay> IN_TIME =
            Comparator.comparing(HalfDay::date).thenComparing(HalfDay::half);

    public static HalfDay morning(LocalDate date) {
        return new HalfDay(date, Half.MORNING);
    }

    public static HalfDay afternoon(LocalDate date) {
        return new HalfDay(date, Half.AFTERNOON);
    }

    /** The next half-day of the clock, working or not. */
    public HalfDay next() {
        return half == Half.MORNING ? afternoon(date) : morning(date.plusDays(1));
    }

    public HalfDay previous() {
        return half == Half.AFTERNOON ? morning(date) : afternoon(date.minusDays(1));
    }

    public boolean isBefore(HalfDay other) {
        return compareTo(other) < 0;
    }

    public boolean isAfter(HalfDay other) {
        return compareTo(other) > 0;
    }

    /** As in "Fri, Mar 12, morning". */
    public String words() {
        return DayWords.of(date) + ", " + half.words();
    }

    @Override
    public int compareTo(HalfDay other) {
        return IN_TIME.compare(this, other);
    }
}
