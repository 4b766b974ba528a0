package org.plumbrow.estimate.site;

import java.time.YearMonth;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.plumbrow.calc.finance.use.Flow;
import org.plumbrow.calc.finance.use.GreenButton;
import org.plumbrow.calc.finance.use.TypedMonths;
import org.plumbrow.calc.finance.use.UseChannel;
import org.plumbrow.calc.finance.use.UseFinding;
import org.plumbrow.calc.finance.use.UseInterval;
import org.plumbrow.calc.finance.use.UseReading;
import org.plumbrow.calc.finance.use.UseTable;
import org.plumbrow.estimate.site.UseMeter.Kind;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.evidence.table.TableReader;
import org.plumbrow.evidence.table.TableUnreadable;
import org.plumbrow.evidence.table.UserTable;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Component;

/** Reads what was brought for a meter, at first and again whenever the site's use is worked out anew. */
@Component
class MeterReadings {

    private static final int ROWS_SHOWN = 6;
    private static final int CELLS_SHOWN = 8;

    private final EvidenceStore evidence;

    MeterReadings(EvidenceStore evidence) {
        this.evidence = evidence;
    }

    static Kind kindOf(String text) {
        String start = text.startsWith("\uFEFF") ? text.substring(1) : text;
        return start.stripLeading().startsWith("<") ? Kind.GREEN_BUTTON : Kind.TABLE;
    }

    static UseReading read(Kind kind, String name, ZoneRules clock, String text, boolean wattHours) {
        return kind == Kind.GREEN_BUTTON
                ? GreenButton.read(text, new GreenButton.Assumed(clock, wattHours))
                : UseTable.read(name, clock, text);
    }

    static UseChannel typed(String name, ZoneRules clock, UseMeter.TypedUse typed) {
        return TypedMonths.of(name, clock, typed.firstMonth(), typed.kwh());
    }

    /** The channels of a meter that is kept. */
    List<UseChannel> channels(UseMeter meter, ZoneRules clock) {
        UseMeter.TypedUse typed = meter.typed();
        if (typed != null) {
            return List.of(typed(meter.name(), clock, typed));
        }
        UUID file = java.util.Objects.requireNonNull(meter.evidenceId());
        byte[] bytes = evidence.file(file).orElseThrow(NotFound::new).bytes();
        return read(meter.kind(), meter.name(), clock, FileText.of(bytes), meter.wattHours())
                .channels();
    }

    static UseMeter.Reading summary(List<UseChannel> channels, List<UseFinding> findings, List<List<String>> preview) {
        return new UseMeter.Reading(
                channels.stream().map(MeterReadings::channel).toList(),
                findings.stream().map(UseFinding::sentence).toList(),
                preview);
    }

    private static UseMeter.Channel channel(UseChannel channel) {
        List<UseMeter.Month> months = new ArrayList<>();
        channel.months()
                .forEach((month, known) -> months.add(new UseMeter.Month(
                        month.toString(),
                        known.kwh(),
                        100 * known.hours() / hoursOf(channel, month),
                        known.estimated())));
        return new UseMeter.Channel(
                channel.meter(),
                channel.flow() != Flow.RECEIVED,
                channel.start(),
                channel.end(),
                channel.kwh(),
                channel.intervals().size(),
                channel.estimated(),
                channel.intervals().stream()
                        .mapToDouble(UseInterval::hours)
                        .max()
                        .orElse(0),
                months);
    }

    private static double hoursOf(UseChannel channel, YearMonth month) {
        var from = month.atDay(1).atStartOfDay();
        var to = month.plusMonths(1).atDay(1).atStartOfDay();
        long seconds = to.toEpochSecond(channel.clock().getOffset(to))
                - from.toEpochSecond(channel.clock().getOffset(from));
        return seconds / 3600.0;
    }

    /** The first rows of a table as it was understood, its heading first; empty where it is none. */
    static List<List<String>> preview(byte[] bytes) {
        try {
            UserTable table = TableReader.read(bytes);
            List<List<String>> rows = new ArrayList<>(List.of(shortened(table.header())));
            table.rows().stream().limit(ROWS_SHOWN).forEach(row -> rows.add(shortened(row.cells())));
            return rows;
        } catch (TableUnreadable none) {
            return List.of();
        }
    }

    private static List<String> shortened(List<String> cells) {
        return cells.stream().limit(CELLS_SHOWN).toList();
    }
}
