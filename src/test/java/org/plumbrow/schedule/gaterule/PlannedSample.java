package org.plumbrow.schedule.gaterule;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.schedule.PlannedDates;

/** An activity as a test's plan has it: whole days, no crew, not done. */
final class PlannedSample {

    private PlannedSample() {}

    static PlannedDates of(ActivityCode code, LocalDate from, LocalDate to) {
        return new PlannedDates(
                UUID.randomUUID(),
                UUID.randomUUID(),
                code.key(),
                code,
                code.words(),
                HalfDay.morning(from),
                HalfDay.afternoon(to),
                Optional.empty(),
                false);
    }
}
