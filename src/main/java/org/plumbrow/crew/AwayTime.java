package org.plumbrow.crew;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.LocalDate;
import java.util.UUID;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.web.Refusal;

/** From when to when, and why: the columns that absences of crews and of machines share. */
@Embeddable
public record AwayTime(
        LocalDate firstDay,
        @Enumerated(EnumType.STRING) Half firstHalf,
        LocalDate lastDay,
        @Enumerated(EnumType.STRING) Half lastHalf,
        @Enumerated(EnumType.STRING) AwayReason reason,
        String note) {

    HalfDay first() {
        return new HalfDay(firstDay, firstHalf);
    }

    HalfDay last() {
        return new HalfDay(lastDay, lastHalf);
    }

    boolean isInOrder() {
        return !last().isBefore(first());
    }

    static Refusal outOfOrder() {
        return new Refusal("lastDay", "The absence ends before it begins. Choose a later last day.");
    }

    Away as(UUID id) {
        return new Away(id, first(), last(), reason, note);
    }

    /** "Mon, Mar 22, morning to Fri, Mar 26, afternoon (training)". */
    String words() {
        return first().words() + " to " + last().words() + " ("
                + as(new UUID(0, 0)).words() + ")";
    }
}
