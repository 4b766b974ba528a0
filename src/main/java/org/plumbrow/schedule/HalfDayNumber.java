package org.plumbrow.schedule;

import java.time.LocalDate;
import org.plumbrow.calc.calendar.Half;
import org.plumbrow.calc.calendar.HalfDay;

/** Half-days as the database counts them (its function {@code plumbrow_half_day}): two a day since 1 January 2000. */
public final class HalfDayNumber {

    private static final long FIRST_DAY = LocalDate.of(2000, 1, 1).toEpochDay();

    private HalfDayNumber() {}

    public static int of(HalfDay halfDay) {
        return Math.toIntExact(2 * (halfDay.date().toEpochDay() - FIRST_DAY))
                + (halfDay.half() == Half.AFTERNOON ? 1 : 0);
    }

    public static HalfDay at(long number) {
        LocalDate date = LocalDate.ofEpochDay(FIRST_DAY + Math.floorDiv(number, 2));
        return new HalfDay(date, Math.floorMod(number, 2) == 0 ? Half.MORNING : Half.AFTERNOON);
    }
}
