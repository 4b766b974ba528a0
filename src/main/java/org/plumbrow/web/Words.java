package org.plumbrow.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/**
 * Dates, times and figures as people write them; in templates {@code ${@words.day(date)}}. The zone is always the
 * branch's, never the browser's. A missing value is a dash.
 */
@Component
public class Words {

    private static final Locale EN = Locale.US;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE, MMM d", EN);
    private static final DateTimeFormatter DAY_AND_YEAR = DateTimeFormatter.ofPattern("EEE, MMM d, yyyy", EN);
    private static final DateTimeFormatter LONG_DAY = DateTimeFormatter.ofPattern("EEEE, MMMM d", EN);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("h:mm a", EN);
    private static final String MISSING = "–";

    private final Clock clock;
    private final Access access;

    Words(Clock clock, Access access) {
        this.clock = clock;
        this.access = access;
    }

    public ZoneId zone() {
        return access.presentBranch().map(BranchCard::zone).orElse(ZoneOffset.UTC);
    }

    /** Today in the branch being looked at. */
    public LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), zone());
    }

    /** "Fri, Mar 26"; with the year when it is not this year. */
    public String day(@Nullable LocalDate date) {
        if (date == null) {
            return MISSING;
        }
        return (date.getYear() == today().getYear() ? DAY : DAY_AND_YEAR).format(date);
    }

    /** "Fri, Mar 26, 2027": always with the year, for title blocks. */
    public String fullDay(@Nullable LocalDate date) {
        return date == null ? MISSING : DAY_AND_YEAR.format(date);
    }

    /** "Friday, March 26": as a customer reads it. */
    public String longDay(@Nullable LocalDate date) {
        return date == null ? MISSING : LONG_DAY.format(date);
    }

    /** "Wed, Mar 3 (in 2 days)". */
    public String dayAndDistance(@Nullable LocalDate date) {
        return date == null ? MISSING : day(date) + " (" + distance(date) + ")";
    }

    private String distance(LocalDate date) {
        long days = ChronoUnit.DAYS.between(today(), date);
        if (days == 0) {
            return "today";
        }
        if (Math.abs(days) == 1) {
            return days > 0 ? "tomorrow" : "yesterday";
        }
        return days > 0 ? "in " + days + " days" : -days + " days ago";
    }

    /** "9:00 am", "noon", "midnight". */
    public String time(@Nullable LocalTime time) {
        if (time == null) {
            return MISSING;
        }
        if (time.equals(LocalTime.NOON)) {
            return "noon";
        }
        if (time.equals(LocalTime.MIDNIGHT)) {
            return "midnight";
        }
        return CLOCK.format(time).toLowerCase(EN);
    }

    /** "Mon, Mar 1, 6:40 am" in the branch's zone. */
    public String moment(@Nullable Instant instant) {
        return instant == null ? MISSING : moment(instant, zone());
    }

    public String moment(Instant instant, ZoneId zone) {
        var local = instant.atZone(zone);
        return day(local.toLocalDate()) + ", " + time(local.toLocalTime().truncatedTo(ChronoUnit.MINUTES));
    }

    /** "6:40 am" in the branch's zone. */
    public String timeOf(@Nullable Instant instant) {
        return instant == null
                ? MISSING
                : time(instant.atZone(zone()).toLocalTime().truncatedTo(ChronoUnit.MINUTES));
    }

    /** "45 min", "3 h 30 min". */
    public String minutes(@Nullable Integer minutes) {
        if (minutes == null) {
            return MISSING;
        }
        int hours = minutes / 60;
        return hours == 0 ? minutes + " min" : hours + " h " + "%02d".formatted(minutes % 60) + " min";
    }

    /** "26,410", or "99.0" with one decimal. */
    public String number(@Nullable Number number, int decimals) {
        if (number == null) {
            return MISSING;
        }
        BigDecimal exact = new BigDecimal(number.toString()).setScale(decimals, RoundingMode.HALF_UP);
        return String.format(EN, "%,." + decimals + "f", exact).replace('-', '−');
    }

    /** "$18,240", cents only where there are any. */
    public String money(@Nullable BigDecimal amount) {
        if (amount == null) {
            return MISSING;
        }
        BigDecimal cents = amount.setScale(2, RoundingMode.HALF_UP);
        boolean whole = cents.stripTrailingZeros().scale() <= 0;
        return (cents.signum() < 0 ? "−$" : "$") + String.format(EN, whole ? "%,.0f" : "%,.2f", cents.abs());
    }

    /** "4 working days", "1 working day". */
    public String workingDays(long days) {
        return days + (Math.abs(days) == 1 ? " working day" : " working days");
    }

    /** "1 project", "12 projects": the noun in both numbers. */
    public String count(long count, String one, String many) {
        return number(count, 0) + " " + (count == 1 ? one : many);
    }

    /** "Quillback Valley (Eastern Time)": for the foot of a page. */
    public String zoneWords() {
        return access.presentBranch()
                .map(branch -> branch.name() + " (" + branch.zone().getDisplayName(TextStyle.FULL, EN) + ")")
                .orElse("UTC");
    }
}
