package org.plumbrow.crew;

import java.time.LocalDate;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * A time in which a crew or a machine is not there, both half-days included.
 *
 * @param note what else there is to say; may be empty
 */
public record Away(UUID id, HalfDay first, HalfDay last, AwayReason reason, String note) {

    public boolean holds(LocalDate date) {
        return !date.isBefore(first.date()) && !date.isAfter(last.date());
    }

    /** "training: two days at the maker's", "illness". */
    public String words() {
        return note.isEmpty() ? reason.words() : reason.words() + ": " + note;
    }
}
