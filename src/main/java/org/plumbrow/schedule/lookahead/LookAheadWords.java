package org.plumbrow.schedule.lookahead;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.schedule.forecast.MilestoneForecast;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.PlannedPromise.Outlook;

/** The sentences of the look-ahead that are made from figures. */
final class LookAheadWords {

    private static final String[] SMALL = {
        "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"
    };

    private LookAheadWords() {}

    /** "Look-ahead: one promise breaks, two are at risk". */
    static String heading(String page, List<PlannedPromise> promises, List<String> crewsBookedTwice) {
        List<String> parts = new ArrayList<>();
        long breaks = count(promises, Outlook.BREAKS);
        long atRisk = count(promises, Outlook.AT_RISK);
        long noDate = count(promises, Outlook.NO_DATE);
        if (breaks > 0) {
            parts.add(promises(breaks) + (breaks == 1 ? " breaks" : " break"));
        }
        if (atRisk > 0) {
            parts.add((parts.isEmpty() ? promises(atRisk) : number(atRisk))
                    + (atRisk == 1 ? " is at risk" : " are at risk"));
        }
        if (noDate > 0) {
            parts.add((parts.isEmpty() ? promises(noDate) : number(noDate))
                    + (noDate == 1 ? " has no date" : " have no date"));
        }
        crewsBookedTwice.forEach(crew -> parts.add(crew + " is booked twice"));
        if (parts.isEmpty()) {
            parts.add(allHold(promises.size()));
        }
        return page + ": " + String.join(", ", parts);
    }

    /** "even chance Mon, Apr 12, four in five Tue, Apr 20, kept in 72 of 100 runs". */
    static String likely(MilestoneForecast forecast) {
        String kept = chance(forecast);
        return marks(forecast) + (kept.isEmpty() ? "" : ", " + kept);
    }

    /** "even chance Mon, Apr 12, four in five Tue, Apr 20". */
    static String marks(MilestoneForecast forecast) {
        return "even chance %s, four in five %s"
                .formatted(DayWords.of(forecast.evenChance()), DayWords.of(forecast.fourInFive()));
    }

    /** Empty where nothing was promised. */
    static String chance(MilestoneForecast forecast) {
        return forecast.kept()
                .map(kept -> "kept in " + kept.ofHundred() + " runs")
                .orElse("");
    }

    private static String allHold(int promises) {
        if (promises == 0) {
            return "nothing is promised yet";
        }
        return promises == 1 ? "the one promise holds" : "all " + promises + " promises hold";
    }

    private static String promises(long count) {
        return number(count) + (count == 1 ? " promise" : " promises");
    }

    static String number(long count) {
        return count < SMALL.length ? SMALL[(int) count] : Long.toString(count);
    }

    /** "2,495". */
    static String figure(long count) {
        return String.format(Locale.US, "%,d", count);
    }

    static long count(List<PlannedPromise> promises, Outlook outlook) {
        return promises.stream().filter(promise -> promise.outlook() == outlook).count();
    }

    /** "8: 5 hold, 2 at risk, 1 breaks". */
    static String promiseCounts(List<PlannedPromise> promises) {
        List<String> parts = new ArrayList<>();
        long holds = count(promises, Outlook.HOLDS);
        long atRisk = count(promises, Outlook.AT_RISK);
        long breaks = count(promises, Outlook.BREAKS);
        long noDate = count(promises, Outlook.NO_DATE);
        parts.add(holds + (holds == 1 ? " holds" : " hold"));
        if (atRisk > 0) {
            parts.add(atRisk + " at risk");
        }
        if (breaks > 0) {
            parts.add(breaks + (breaks == 1 ? " breaks" : " break"));
        }
        if (noDate > 0) {
            parts.add(noDate + " without a date");
        }
        return promises.size() + ": " + String.join(", ", parts);
    }

    /** Half-days as days: "4", "4.5". */
    static String inDays(int halfDays) {
        return halfDays % 2 == 0 ? Integer.toString(halfDays / 2) : String.format(Locale.US, "%.1f", halfDays / 2.0);
    }

    /** "3 working days", "half a working day", "1.5 working days". */
    static String workingDays(int halfDays) {
        if (halfDays == 1) {
            return "half a working day";
        }
        return inDays(halfDays) + (halfDays == 2 ? " working day" : " working days");
    }
}
