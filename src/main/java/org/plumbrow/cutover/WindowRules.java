package org.plumbrow.cutover;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.outage.WindowQuestion;
import org.plumbrow.calc.outage.WindowSearch;
import org.plumbrow.calc.outage.WindowSearch.Objection;
import org.plumbrow.web.Refusal;

/** What speaks against a window that somebody names, each sentence at the field it concerns. */
final class WindowRules {

    private WindowRules() {}

    static List<Refusal> against(WindowFinder.Asking asking, OutageChoice choice) {
        List<Refusal> against = new ArrayList<>();
        if (!WindowQuestion.OUTAGE_MINUTES.holds(choice.outageMinutes())) {
            return List.of(new Refusal("outageMinutes", "Write the minutes as a whole number from 15 to 720."));
        }
        if (asking.question().isEmpty()) {
            return List.of(
                    Refusal.ofForm("The site names no utility yet. Name it on the site's page, then choose a window."));
        }
        WindowQuestion question = asking.question().get().about(choice.day(), choice.outageMinutes());
        WindowSearch.against(
                        question, choice.day(), choice.start(), choice.crewId().toString())
                .forEach(objection -> against.add(at(objection)));
        if (isSkippedOrDoubled(
                choice.day(),
                choice.start(),
                choice.outageMinutes(),
                asking.branch().zone())) {
            against.add(new Refusal("start", "In this night the clocks change. Choose an hour that there is once."));
        }
        rain(choice.day(), choice.rainDay(), choice.rainStart(), asking, against);
        return against;
    }

    private static void rain(
            LocalDate day,
            @Nullable LocalDate rainDay,
            @Nullable LocalTime rainStart,
            WindowFinder.Asking asking,
            List<Refusal> against) {
        if ((rainDay == null) != (rainStart == null)) {
            against.add(new Refusal("rainDay", "Write day and time of the rain date, or neither."));
        } else if (rainDay != null && !rainDay.isAfter(day)) {
            against.add(new Refusal("rainDay", "The rain date lies after the day of the outage."));
        } else if (rainDay != null
                && asking.utility().map(utility -> !utility.switchesOn(rainDay)).orElse(false)) {
            against.add(new Refusal("rainDay", "The utility does not switch on that day. Choose another rain date."));
        }
    }

    private static Refusal at(Objection objection) {
        String field = switch (objection.about()) {
            case DAY -> "day";
            case START -> "start";
            case CREW -> "crewId";
        };
        return new Refusal(field, objection.sentence());
    }

    /** On two nights a year some minutes are missing or come twice. */
    static boolean isSkippedOrDoubled(LocalDate day, LocalTime start, int minutes, ZoneId zone) {
        var rules = zone.getRules();
        return rules.getValidOffsets(day.atTime(start)).size() != 1
                || rules.getValidOffsets(day.atTime(start).plusMinutes(minutes)).size() != 1;
    }
}
