package org.plumbrow.permit;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.plumbrow.calc.calendar.DayWords;

/**
 * Why somebody is reminded of a wait.
 *
 * @param day the day it is about: of the promise or need, or the ticket's last
 */
record WaitReminder(Reason reason, LocalDate day) {

    /** Of a day to come (a choice, no source). */
    private static final int DAYS_BEFORE = 2;

    /** A locate ticket takes some days to renew. */
    private static final int DAYS_BEFORE_END = 4;

    /** The names are stored. */
    enum Reason {
        DUE_SOON("%s should be here by %s."),
        OVERDUE("%s should have been here by %s."),
        ENDS("%s counts until %s only: ask again if digging goes on.");

        private final String words;

        Reason(String words) {
            this.words = words;
        }

        /** As a line on the page of the wait: "due Fri, Mar 5". */
        String on(LocalDate day) {
            return switch (this) {
                case DUE_SOON, OVERDUE -> "due " + DayWords.withYear(day);
                case ENDS -> "ends " + DayWords.withYear(day);
            };
        }
    }

    /** @return nothing on a day without anything to remind of */
    static Optional<WaitReminder> of(Awaited one, LocalDate today) {
        if (one.isOpen()) {
            return one.shouldComeOn()
                    .filter(day -> ChronoUnit.DAYS.between(today, day) <= DAYS_BEFORE)
                    .map(day -> new WaitReminder(today.isAfter(day) ? Reason.OVERDUE : Reason.DUE_SOON, day));
        }
        return Optional.ofNullable(one.expiresOn())
                .filter(day -> one.isClearOn(today) && ChronoUnit.DAYS.between(today, day) <= DAYS_BEFORE_END)
                .map(day -> new WaitReminder(Reason.ENDS, day));
    }

    String words(Awaited one) {
        return reason.words.formatted(one.what() + " from " + one.who(), DayWords.withYear(day));
    }
}
