package org.plumbrow.demo;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;

/** The calendar of the demo: days count from the day of the first start, and people work on weekdays. */
record Story(LocalDate today, ZoneId zone) {

    static final ZoneId VALLEY = ZoneId.of("America/New_York");

    static Story from(Instant start) {
        return new Story(LocalDate.ofInstant(start, VALLEY), VALLEY);
    }

    /** So many days before the first start, on a weekday at or before it. */
    LocalDate daysAgo(int days) {
        LocalDate day = today.minusDays(days);
        return switch (day.getDayOfWeek()) {
            case SATURDAY -> day.minusDays(1);
            case SUNDAY -> day.minusDays(2);
            default -> day;
        };
    }

    /** So many days from the first start, on a weekday at or after it; for negative days at or before it. */
    LocalDate inDays(int days) {
        if (days < 0) {
            return daysAgo(-days);
        }
        LocalDate day = today.plusDays(days);
        while (day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY) {
            day = day.plusDays(1);
        }
        return day;
    }

    Instant at(LocalDate day, LocalTime time) {
        return day.atTime(time).atZone(zone).toInstant();
    }

    /** During office hours of that day, a little later for each step; never after the first start itself. */
    Instant during(LocalDate day, int step) {
        Instant moment = at(day, LocalTime.of(8, 5)).plusSeconds(step * 240L);
        Instant latest = at(today, LocalTime.of(0, 1));
        return day.isBefore(today) || moment.isBefore(latest) ? moment : latest.plusSeconds(step);
    }
}
