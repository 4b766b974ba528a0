package org.plumbrow.status.page;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Days, hours and sentences as customers read them: "Friday, March 26", "from 9:00 to about 10:30 in the morning". */
@Component
class CustomerWords {

    private static final Locale LANGUAGE = Locale.US;
    private static final DateTimeFormatter LONG_DAY = DateTimeFormatter.ofPattern("EEEE, MMMM d", LANGUAGE);
    private static final DateTimeFormatter LONG_DAY_AND_YEAR =
            DateTimeFormatter.ofPattern("EEEE, MMMM d, yyyy", LANGUAGE);
    private static final DateTimeFormatter SHORT_DAY = DateTimeFormatter.ofPattern("MMM d", LANGUAGE);
    private static final DateTimeFormatter SHORT_DAY_AND_YEAR = DateTimeFormatter.ofPattern("MMM d, yyyy", LANGUAGE);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("h:mm", LANGUAGE);
    private static final LocalTime EVENING = LocalTime.of(18, 0);

    private final MessageSource texts;

    CustomerWords(MessageSource texts) {
        this.texts = texts;
    }

    String say(String key, Object... facts) {
        return texts.getMessage(key, facts, LANGUAGE);
    }

    /** "Friday, March 26"; with the year when it is another than today's. */
    static String day(LocalDate date, LocalDate today) {
        return (date.getYear() == today.getYear() ? LONG_DAY : LONG_DAY_AND_YEAR).format(date);
    }

    /** "Mar 26". */
    static String shortDay(LocalDate date, LocalDate today) {
        return (date.getYear() == today.getYear() ? SHORT_DAY : SHORT_DAY_AND_YEAR).format(date);
    }

    /** "9:00 in the morning". */
    String time(LocalTime time) {
        return time.equals(LocalTime.NOON) ? say("status.time.noon") : say(partOfDay(time), CLOCK.format(time));
    }

    String time(Instant at, ZoneId zone) {
        return time(clock(at, zone));
    }

    static LocalTime clock(Instant at, ZoneId zone) {
        return at.atZone(zone).toLocalTime().truncatedTo(ChronoUnit.MINUTES);
    }

    private static String partOfDay(LocalTime time) {
        if (time.isBefore(LocalTime.NOON)) {
            return "status.time.morning";
        }
        return time.isBefore(EVENING) ? "status.time.afternoon" : "status.time.evening";
    }

    /** "from 9:00 to about 10:30 in the morning". */
    String span(LocalTime from, LocalTime to) {
        return say("status.time.span", begin(from, to), time(to));
    }

    /** "from 9:02 to 10:20 in the morning", of what has taken place. */
    String was(LocalTime from, LocalTime to) {
        return say("status.time.was", begin(from, to), time(to));
    }

    /** The part of the day is said once where both lie in it. */
    private String begin(LocalTime from, LocalTime to) {
        boolean same = !from.equals(LocalTime.NOON)
                && !to.equals(LocalTime.NOON)
                && partOfDay(from).equals(partOfDay(to));
        return same ? CLOCK.format(from) : time(from);
    }

    /** "1 hour 30 minutes", "2 hours", "45 minutes". */
    String minutes(int minutes) {
        int hours = minutes / 60;
        int rest = minutes % 60;
        if (hours == 0) {
            return say("status.time.minutes", rest);
        }
        return rest == 0 ? say("status.time.hours", hours) : say("status.time.both", hours, rest);
    }

    static String zone(ZoneId zone) {
        return zone.getDisplayName(TextStyle.FULL, LANGUAGE);
    }
}
