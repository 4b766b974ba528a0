package org.plumbrow.crew;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.web.Option;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Component;

/** Absences as people say them; in templates {@code ${@awayWords.when(…)}}. */
@Component
class AwayWords {

    private final Words words;

    AwayWords(Words words) {
        this.words = words;
    }

    /** "Mon, Mar 22 to Fri, Mar 26"; halves are named only where a day is not whole. */
    public String when(Away away) {
        boolean wholeDays = away.first().half() == Half.MORNING && away.last().half() == Half.AFTERNOON;
        boolean oneDay = away.first().date().equals(away.last().date());
        if (oneDay) {
            return wholeDays ? words.day(away.first().date()) : half(away.first());
        }
        return wholeDays
                ? words.day(away.first().date()) + " to "
                        + words.day(away.last().date())
                : half(away.first()) + " to " + half(away.last());
    }

    private String half(HalfDay day) {
        return words.day(day.date()) + ", " + day.half().words();
    }

    /** The next absence that has not ended, today's first. */
    public Optional<Away> next(List<Away> away, LocalDate today) {
        return away.stream().filter(time -> !time.last().date().isBefore(today)).findFirst();
    }

    static List<Option> halves() {
        return Arrays.stream(Half.values())
                .map(half -> new Option(half.name(), half.words()))
                .toList();
    }

    static List<Option> reasons(List<AwayReason> reasons) {
        return reasons.stream()
                .map(reason -> new Option(reason.name(), reason.words()))
                .toList();
    }
}
