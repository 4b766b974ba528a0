package org.plumbrow.calc.finance.use;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Use from a table: a line of column names, then one row for each span. Columns are found by name: "start" or "from" or
 * "date" or "month" (needed), "end" or "to" (else a row lasts until the next), "kwh" or "use" or "usage" (needed),
 * "estimated" (yes). Dates are 2026-03-31 or 3/31/2026, with a time or without; months 2026-03. Separated by commas,
 * semicolons or tabs. Times are the local clock's; an hour that comes twice in autumn is read in order.
 */
public final class UseTable {

    private static final int MOST_CHARACTERS = 50_000_000;
    private static final int MOST_ROWS = 500_000;

    private final ZoneRules clock;
    private final List<TableRow> rows;
    private final UseColumns columns;

    private UseTable(ZoneRules clock, String text) {
        this.clock = clock;
        List<String> lines = lines(text);
        TableRow header = TableRow.of(1, lines.get(0), TableRow.separatorOf(lines.get(0)));
        this.columns = UseColumns.of(header);
        this.rows = new ArrayList<>();
        for (int at = 1; at < lines.size(); at++) {
            if (!lines.get(at).isBlank()) {
                rows.add(TableRow.of(at + 1, lines.get(at), header.separator()));
            }
        }
    }

    /**
     * @param meter as people call it
     * @param clock of the meter's place
     * @param text the whole table
     */
    public static UseReading read(String meter, ZoneRules clock, String text) {
        try {
            List<UseFinding> findings = new ArrayList<>();
            UseTable table = new UseTable(clock, text);
            UseChannel channel = UseChannel.cleaned(meter, Flow.DELIVERED, clock, table.intervals(findings), findings);
            return new UseReading(List.of(channel), findings);
        } catch (UseRefused why) {
            return UseReading.refused(why);
        }
    }

    private static List<String> lines(String text) {
        if (text.length() > MOST_CHARACTERS) {
            throw new UseRefused("The table is larger than 50 MB.", "Bring one or two years.");
        }
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        List<String> lines = plain.lines().toList();
        if (lines.isEmpty() || plain.isBlank()) {
            throw new UseRefused("The table is empty.", "Bring a table with a line of column names.");
        }
        if (lines.size() > MOST_ROWS) {
            throw new UseRefused("The table has more than 500,000 rows.", "Bring one or two years.");
        }
        return lines;
    }

    private List<UseInterval> intervals(List<UseFinding> findings) {
        List<LocalSpan> spans = new ArrayList<>();
        for (TableRow row : rows) {
            spans.add(columns.span(row));
        }
        boolean lastDayIncluded = isLastDayIncluded(spans);
        if (lastDayIncluded) {
            findings.add(UseFinding.note("The dates in \"to\" are the last days themselves.", "They were read so."));
        }
        List<Instant> starts = starts(spans);
        List<UseInterval> intervals = new ArrayList<>();
        for (int at = 0; at < spans.size(); at++) {
            intervals.add(interval(spans, starts, at, lastDayIncluded));
        }
        return intervals;
    }

    private UseInterval interval(List<LocalSpan> spans, List<Instant> starts, int at, boolean lastDayIncluded) {
        LocalSpan span = spans.get(at);
        Instant start = starts.get(at);
        Instant end = span.end()
                .map(local -> instant(lastDayIncluded ? local.plusDays(1) : local))
                .or(() -> span.isMonth() ? Optional.of(instant(span.start().plusMonths(1))) : Optional.empty())
                .orElseGet(() -> nextStart(starts, at));
        if (!start.isBefore(end)) {
            throw new UseRefused(
                    "Line %,d: the span does not end after it begins.".formatted(span.line()), "Correct its dates.");
        }
        return new UseInterval(start, end, span.kwh(), span.estimated());
    }

    /** The last row lasts as long as the one before it. */
    private Instant nextStart(List<Instant> starts, int at) {
        if (at + 1 < starts.size()) {
            return starts.get(at + 1);
        }
        if (at == 0) {
            throw new UseRefused("One row without an end says nothing of its length.", "Add a column \"end\".");
        }
        return starts.get(at).plus(Duration.between(starts.get(at - 1), starts.get(at)));
    }

    private static boolean isLastDayIncluded(List<LocalSpan> spans) {
        long gaps = 0;
        for (int at = 1; at < spans.size(); at++) {
            LocalDateTime start = spans.get(at).start();
            gaps += spans.get(at - 1)
                            .end()
                            .filter(end -> end.plusDays(1).equals(start))
                            .isPresent()
                    ? 1
                    : 0;
        }
        return spans.size() > 1 && gaps > (spans.size() - 1) / 2;
    }

    /** A local time that does not come after the one before it is that of the clock set back. */
    private List<Instant> starts(List<LocalSpan> spans) {
        List<Instant> starts = new ArrayList<>();
        for (LocalSpan span : spans) {
            Instant start = instant(span.start());
            List<ZoneOffset> offsets = clock.getValidOffsets(span.start());
            boolean again = !starts.isEmpty() && !start.isAfter(starts.get(starts.size() - 1));
            starts.add(offsets.size() == 2 && again ? span.start().toInstant(offsets.get(1)) : start);
        }
        return starts;
    }

    private Instant instant(LocalDateTime local) {
        return local.toInstant(clock.getOffset(local));
    }
}
