package org.plumbrow.calc.outage;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.calendar.WorkingCalendar;

/**
 * All that decides on which days the power can be off.
 *
 * @param today the day on which the notices would leave
 * @param through last day to look at
 * @param outageMinutes 15 to 720
 * @param crews those with a licensed electrician, the preferred one first
 */
public record WindowQuestion(
        LocalDate today,
        LocalDate through,
        Earliest earliest,
        int outageMinutes,
        UtilityTerms utility,
        WorkingCalendar branch,
        List<CrewOffer> crews,
        List<Blackout> blackouts,
        Optional<Promise> promise) {

    public static final Range OUTAGE_MINUTES = new Range(15, 720, "min");

    public WindowQuestion {
        OUTAGE_MINUTES.check("outage", outageMinutes);
        crews = List.copyOf(crews);
        blackouts = List.copyOf(blackouts);
    }

    /** The same question about a day and minutes that somebody names. */
    public WindowQuestion about(LocalDate day, int minutes) {
        LocalDate last = through.isBefore(day) ? day : through;
        return new WindowQuestion(today, last, earliest, minutes, utility, branch, crews, blackouts, promise);
    }

    /** The first day on which the work before the outage is done; {@code why} says what the days before it lack. */
    public record Earliest(LocalDate day, String why) {}

    /** The last cutover day that keeps a promise; {@code words} names it: "System on, promised for Fri, Apr 16". */
    public record Promise(LocalDate latestCutover, String words) {}
}
