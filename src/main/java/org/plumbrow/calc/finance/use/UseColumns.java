package org.plumbrow.calc.finance.use;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Where the columns of a use table are, and how its cells read. */
record UseColumns(int start, int end, int kwh, int estimated) {

    private static final List<DateTimeFormatter> TIMES = List.of(
            DateTimeFormatter.ISO_LOCAL_DATE_TIME,
            DateTimeFormatter.ofPattern("uuuu-M-d H:mm[:ss]"),
            DateTimeFormatter.ofPattern("M/d/uuuu H:mm[:ss]"),
            DateTimeFormatter.ofPattern("M/d/uuuu h:mm[:ss] a", Locale.US));
    private static final List<DateTimeFormatter> DAYS =
            List.of(DateTimeFormatter.ISO_LOCAL_DATE, DateTimeFormatter.ofPattern("M/d/uuuu"));
    private static final Set<String> YES = Set.of("yes", "y", "true", "1", "e", "estimated");

    static UseColumns of(TableRow header) {
        UseColumns columns = new UseColumns(
                find(header, "start", "from", "date", "month"),
                find(header, "end", "to"),
                find(header, "kwh", "use", "usage"),
                find(header, "estimated", "estimate"));
        if (columns.start < 0 || columns.kwh < 0) {
            throw new UseRefused(
                    "Line 1: there is no column \"%s\".".formatted(columns.start < 0 ? "start" : "kwh"),
                    "Name the columns in the first line: start, end, kwh, estimated.");
        }
        return columns;
    }

    private static int find(TableRow header, String... names) {
        for (String name : names) {
            for (int at = 0; at < header.cells().size(); at++) {
                String cell = header.text(at)
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("\\(.*\\)", "")
                        .trim();
                if (cell.equals(name)) {
                    return at;
                }
            }
        }
        return -1;
    }

    LocalSpan span(TableRow row) {
        String from = row.text(start);
        Optional<LocalDateTime> month = month(from);
        String to = row.text(end);
        return new LocalSpan(
                row.line(),
                month.orElseGet(() -> time(row, start)),
                to.isEmpty() ? Optional.empty() : Optional.of(time(row, end)),
                month.isPresent(),
                energy(row),
                YES.contains(row.text(estimated).toLowerCase(Locale.ROOT)));
    }

    private static Optional<LocalDateTime> month(String cell) {
        if (!cell.matches("\\d{4}-\\d{1,2}")) {
            return Optional.empty();
        }
        try {
            return Optional.of(YearMonth.parse(cell, DateTimeFormatter.ofPattern("uuuu-M"))
                    .atDay(1)
                    .atStartOfDay());
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private static LocalDateTime time(TableRow row, int at) {
        String cell = row.text(at);
        for (DateTimeFormatter day : DAYS) {
            try {
                return LocalDate.parse(cell, day).atStartOfDay();
            } catch (DateTimeException e) {
                // the next form may fit
            }
        }
        for (DateTimeFormatter time : TIMES) {
            try {
                return LocalDateTime.parse(cell, time);
            } catch (DateTimeException e) {
                // the next form may fit
            }
        }
        throw new UseRefused(
                "Line %,d: \"%s\" is no date that is read here.".formatted(row.line(), cell),
                "Write 2026-03-31 or 3/31/2026, with 14:00 after it where the time counts.");
    }

    private double energy(TableRow row) {
        String cell = row.text(kwh).replace(",", "").replaceFirst("(?i)\\s*kwh$", "");
        try {
            return UseInterval.KWH.check("use", Double.parseDouble(cell));
        } catch (IllegalArgumentException e) {
            throw new UseRefused(
                    "Line %,d: \"%s\" is no use in kWh.".formatted(row.line(), row.text(kwh)),
                    "Write a number such as 1,250.");
        }
    }
}
