package org.plumbrow.schedule.activity;

import java.time.LocalDate;
import java.util.Optional;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.web.Refusal;

/** Why a start cannot be settled, at the form's field {@code day} or {@code crewId}. Pure. */
final class StartRefusals {

    /** Nobody agrees on a morning so far ahead; most likely the year is a slip. */
    private static final int MOST_YEARS_AHEAD = 2;

    private StartRefusals() {}

    /** @param crew the one that is wanted, if it works on that day */
    static Optional<Refusal> of(Activity activity, Pin pin, Optional<CrewFacts> crew, LocalDate today) {
        LocalDate day = pin.start().date();
        if (activity.recorded().started().isPresent()) {
            return Optional.of(
                    new Refusal("day", "It has begun. What has begun goes on where it is; record what is left."));
        }
        if (day.isBefore(today)) {
            return Optional.of(new Refusal(
                    "day",
                    "%s has passed; today is %s. Choose today or a later day."
                            .formatted(DayWords.of(day), DayWords.of(today))));
        }
        if (day.isAfter(today.plusYears(MOST_YEARS_AHEAD))) {
            return Optional.of(new Refusal("day", "Choose a day within two years."));
        }
        return pin.crewId().isPresent() && crew.isEmpty()
                ? Optional.of(new Refusal("crewId", "This crew does not work on that day. Choose another crew or day."))
                : Optional.empty();
    }
}
