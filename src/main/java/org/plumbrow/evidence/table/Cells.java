package org.plumbrow.evidence.table;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.plumbrow.web.NumbersAsWritten;

/** What stands in a cell, as people and their spreadsheets write it. An empty cell, a dash and "n/a" hold nothing. */
public final class Cells {

    private static final Set<String> NOTHING =
            Set.of("", "-", "–", "—", "n/a", "na", "none", "null", "?", "#n/a", "unknown");
    private static final Set<String> YES = Set.of("yes", "y", "true", "1", "x", "si", "sí");
    private static final Set<String> NO = Set.of("no", "n", "false", "0");
    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
    private static final Pattern ISO = Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})(?:[T ].*)?");
    private static final Pattern FIGURES = Pattern.compile("(\\d{1,2})[-/.](\\d{1,2})[-/.](\\d{2}|\\d{4})(?: .*)?");
    private static final Pattern DAY_FIRST =
            Pattern.compile("(\\d{1,2})[- /.]+(\\p{L}{3,9})\\.?,?[- /.]+(\\d{2}|\\d{4})");
    private static final Pattern MONTH_FIRST = Pattern.compile("(\\p{L}{3,9})\\.? +(\\d{1,2}),? +(\\d{4})");

    private Cells() {}

    /** In which order the figures of "3/4/27" stand. */
    public enum DateOrder {
        MONTH_FIRST,
        DAY_FIRST
    }

    public static boolean isEmpty(String cell) {
        return NOTHING.contains(cell.strip().toLowerCase(Locale.ROOT));
    }

    /** A number with grouping commas, a currency sign or a unit. @throws CellUnreadable if it is none */
    public static Optional<BigDecimal> number(String cell) throws CellUnreadable {
        if (isEmpty(cell)) {
            return Optional.empty();
        }
        try {
            return Optional.of(NumbersAsWritten.read(cell));
        } catch (NumberFormatException none) {
            throw new CellUnreadable("“" + cell + "” is no number");
        }
    }

    /** A whole number, "21" or "21.0". @throws CellUnreadable if it is none */
    public static Optional<Integer> whole(String cell) throws CellUnreadable {
        Optional<BigDecimal> number = number(cell);
        if (number.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(number.get().intValueExact());
        } catch (ArithmeticException fraction) {
            throw new CellUnreadable("“" + cell + "” is no whole number");
        }
    }

    /** @throws CellUnreadable for anything but yes and no */
    public static Optional<Boolean> yesOrNo(String cell) throws CellUnreadable {
        String word = cell.strip().toLowerCase(Locale.ROOT);
        if (YES.contains(word)) {
            return Optional.of(true);
        }
        if (NO.contains(word)) {
            return Optional.of(false);
        }
        if (isEmpty(cell)) {
            return Optional.empty();
        }
        throw new CellUnreadable("“" + cell + "” is neither yes nor no");
    }

    /** A date; two-digit years 70 to 99 are 19xx, all others 20xx. @throws CellUnreadable if it is none */
    public static Optional<LocalDate> date(String cell, DateOrder order) throws CellUnreadable {
        if (isEmpty(cell)) {
            return Optional.empty();
        }
        String written = cell.strip();
        try {
            Optional<LocalDate> found =
                    iso(written).or(() -> figures(written, order)).or(() -> words(written));
            if (found.isPresent()) {
                return found;
            }
        } catch (DateTimeException noSuchDay) {
            throw new CellUnreadable("“" + cell + "” is no date");
        }
        throw new CellUnreadable("“" + cell + "” is no date");
    }

    private static Optional<LocalDate> iso(String written) {
        Matcher m = ISO.matcher(written);
        return m.matches() ? Optional.of(LocalDate.of(figure(m, 1), figure(m, 2), figure(m, 3))) : Optional.empty();
    }

    private static Optional<LocalDate> figures(String written, DateOrder order) {
        Matcher m = FIGURES.matcher(written);
        if (!m.matches()) {
            return Optional.empty();
        }
        boolean monthFirst = order == DateOrder.MONTH_FIRST;
        return Optional.of(
                LocalDate.of(year(m.group(3)), figure(m, monthFirst ? 1 : 2), figure(m, monthFirst ? 2 : 1)));
    }

    private static Optional<LocalDate> words(String written) {
        Matcher day = DAY_FIRST.matcher(written);
        if (day.matches()) {
            return month(day.group(2)).map(month -> LocalDate.of(year(day.group(3)), month, figure(day, 1)));
        }
        Matcher month = MONTH_FIRST.matcher(written);
        return month.matches()
                ? month(month.group(1)).map(found -> LocalDate.of(figure(month, 3), found, figure(month, 2)))
                : Optional.empty();
    }

    private static Optional<Integer> month(String name) {
        int index = MONTHS.indexOf(name.toLowerCase(Locale.ROOT).substring(0, 3));
        return index < 0 ? Optional.empty() : Optional.of(index + 1);
    }

    private static int year(String written) {
        int year = Integer.parseInt(written);
        if (written.length() == 4) {
            return year;
        }
        return year >= 70 ? 1900 + year : 2000 + year;
    }

    private static int figure(Matcher m, int group) {
        return Integer.parseInt(m.group(group));
    }
}
