package org.plumbrow.schedule.projectdates;

import java.util.Locale;
import java.util.Optional;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.schedule.activity.ActivityRow;
import org.plumbrow.schedule.activity.Recorded;
import org.plumbrow.schedule.forecast.MilestoneForecast;
import org.plumbrow.schedule.plan.PlannedPromise;

/** The sentences of a project's dates that are made from figures. */
final class DatesWords {

    private DatesWords() {}

    /** "Sedge Hollow Dairy: system on planned Mon, Apr 12, the promise breaks by 4 working days". */
    static String heading(String project, Optional<PlannedPromise> promise, boolean hasPlan) {
        if (promise.isEmpty()) {
            return project + (hasPlan ? ": dates; nothing is promised yet" : ": no dates yet");
        }
        PlannedPromise said = promise.get();
        String planned = said.finish()
                .map(finish -> said.milestone() + " planned " + DayWords.of(finish.date()))
                .orElse(said.milestone() + " has no date");
        return project + ": " + planned + outcome(said);
    }

    private static String outcome(PlannedPromise promise) {
        return switch (promise.outlook()) {
            case HOLDS, AT_RISK ->
                ", "
                        + (promise.daysSpare() == 0 ? "no day" : count(promise.daysSpare(), "working day"))
                        + " before the promise";
            case BREAKS -> ", " + count(promise.daysLate(), "working day") + " after the promise";
            case NO_DATE -> "";
        };
    }

    static String likely(MilestoneForecast forecast) {
        String milestone = forecast.milestone().words();
        return "%s%s, played many times: even chance by %s, four in five by %s%s."
                .formatted(
                        milestone.substring(0, 1).toUpperCase(Locale.ROOT),
                        milestone.substring(1),
                        DayWords.of(forecast.evenChance()),
                        DayWords.of(forecast.fourInFive()),
                        forecast.kept()
                                .map(kept -> "; the promise is kept in " + kept.ofHundred() + " runs")
                                .orElse(""));
    }

    static String shape(ActivityRow row) {
        Recorded recorded = row.recorded();
        if (recorded.finished().isPresent()) {
            return row.isWait() ? "answered" : "done";
        }
        if (recorded.started().isEmpty()) {
            return row.isWait() ? "todo" : "todo";
        }
        if (row.isWait()) {
            return recorded.answerExpected().isPresent() ? "due" : "wait";
        }
        return "part";
    }

    /** "Done Fri, Mar 5", "Under way since Mon, Mar 1", "Promised for Mon, Mar 15", "Not started". */
    static String state(ActivityRow row) {
        Recorded recorded = row.recorded();
        if (recorded.finished().isPresent()) {
            return (row.isWait() ? "Answered " : "Done ")
                    + day(recorded.finished().get());
        }
        if (recorded.started().isEmpty()) {
            return row.isWait() ? "Not asked for" : "Not started";
        }
        if (row.isWait()) {
            return recorded.answerExpected()
                    .map(expected -> "Promised for " + DayWords.of(expected))
                    .orElseGet(() -> "Waiting since " + day(recorded.started().get()));
        }
        return "Under way since " + day(recorded.started().get());
    }

    private static String day(HalfDay halfDay) {
        return DayWords.of(halfDay.date());
    }

    /** Work as planned half-days: "2.5 days"; a wait as its days: "15 working days". */
    static String duration(ActivityRow row, Spread days) {
        if (row.isWait()) {
            return figure(Math.round(days.typical())) + " "
                    + row.counting().map(ActivityRow.Counting::words).orElse("days");
        }
        double planned = days.halfDaysTypical() / 2.0;
        return figure(planned) + (planned == 1 || planned == 0.5 ? " day" : " days");
    }

    private static String figure(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : String.format(Locale.US, "%.1f", value);
    }

    static String count(int count, String noun) {
        return count + " " + noun + (count == 1 ? "" : "s");
    }

    /** "Mon, Mar 8 to Fri, Mar 12", "Mon, Mar 8, morning". */
    static String span(HalfDay first, HalfDay last) {
        if (first.date().equals(last.date())) {
            return first.equals(last) ? first.words() : DayWords.of(first.date());
        }
        return DayWords.of(first.date()) + " to " + DayWords.of(last.date());
    }
}
