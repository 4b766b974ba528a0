package org.plumbrow.calc.outage.ranking;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;

/** The site's wall clock as whole minutes from the midnight of one day. */
record SiteClock(LocalDate zero) {

    static final int DAY = 1440;
    static final int NEVER = Integer.MAX_VALUE;

    int at(LocalDateTime time) {
        return at(time.toLocalDate(), time.toLocalTime());
    }

    int at(LocalDate day, LocalTime time) {
        return dayNumber(day) * DAY + minuteOf(time);
    }

    int startOf(LocalDate day) {
        return dayNumber(day) * DAY;
    }

    int dayNumber(LocalDate day) {
        return Math.toIntExact(ChronoUnit.DAYS.between(zero, day));
    }

    LocalDate day(int minute) {
        return zero.plusDays(Math.floorDiv(minute, DAY));
    }

    LocalDateTime time(int minute) {
        return zero.atStartOfDay().plusMinutes(minute);
    }

    /** The end of the day counts as midnight. */
    static int minuteOf(LocalTime time) {
        return time.equals(LocalTime.MAX) ? DAY : time.toSecondOfDay() / 60;
    }

    static int endOfDay(int minute) {
        return (Math.floorDiv(minute, DAY) + 1) * DAY;
    }
}
