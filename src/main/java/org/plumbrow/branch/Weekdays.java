package org.plumbrow.branch;

import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** The days of the week that count, at least one; kept in the database as seven letters, {@code MTWTF--}. */
public record Weekdays(Set<DayOfWeek> days) {

    public static final Weekdays MONDAY_TO_FRIDAY = new Weekdays(EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY));

    private static final String LETTERS = "MTWTFSS";

    public Weekdays {
        if (days.isEmpty()) {
            throw new IllegalArgumentException("no weekday counts");
        }
        days = Set.copyOf(days);
    }

    /** @param letters seven, a dash where the day does not count */
    public static Weekdays of(String letters) {
        return new Weekdays(Arrays.stream(DayOfWeek.values())
                .filter(day -> letters.charAt(day.ordinal()) != '-')
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(DayOfWeek.class))));
    }

    public String letters() {
        return Arrays.stream(DayOfWeek.values())
                .map(day -> days.contains(day) ? LETTERS.substring(day.ordinal(), day.ordinal() + 1) : "-")
                .collect(Collectors.joining());
    }

    public boolean holds(DayOfWeek day) {
        return days.contains(day);
    }

    public List<DayOfWeek> inOrder() {
        return days.stream().sorted().toList();
    }

    /** "Monday to Friday", "Tuesday, Wednesday and Thursday", "Saturday". */
    public String words() {
        return words(days);
    }

    /** As {@link #words()}, for what a form holds, which may be nothing. */
    public static String words(Collection<DayOfWeek> chosen) {
        List<DayOfWeek> order = chosen.stream().sorted().toList();
        if (order.isEmpty()) {
            return "";
        }
        DayOfWeek first = order.get(0);
        DayOfWeek last = order.get(order.size() - 1);
        boolean unbroken = last.ordinal() - first.ordinal() == order.size() - 1;
        if (unbroken && order.size() > 2) {
            return name(first) + " to " + name(last);
        }
        String all = order.stream().map(Weekdays::name).collect(Collectors.joining(", "));
        int comma = all.lastIndexOf(", ");
        return comma < 0 ? all : all.substring(0, comma) + " and " + all.substring(comma + 2);
    }

    private static String name(DayOfWeek day) {
        return day.getDisplayName(TextStyle.FULL, Locale.US);
    }
}
