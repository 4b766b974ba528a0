package org.plumbrow.calc.finance.use;

import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * One direction of one meter: intervals in order of time, none overlapping another.
 *
 * @param meter as people call it: "Barn"
 * @param flow which way
 * @param clock the meter's local time
 * @param intervals at least one
 */
public record UseChannel(String meter, Flow flow, ZoneRules clock, List<UseInterval> intervals) {

    /** @throws IllegalArgumentException if there is none or two overlap; {@link #cleaned} makes them fit */
    public UseChannel {
        intervals = intervals.stream()
                .sorted(Comparator.comparing(UseInterval::start))
                .toList();
        if (intervals.isEmpty()) {
            throw new IllegalArgumentException("meter " + meter + " has no interval");
        }
        for (int at = 1; at < intervals.size(); at++) {
            if (intervals.get(at).start().isBefore(intervals.get(at - 1).end())) {
                throw new IllegalArgumentException("meter %s: %s overlaps"
                        .formatted(meter, intervals.get(at).start()));
            }
        }
    }

    /** Energy and coverage of one calendar month. */
    public record Month(double kwh, double hours, int intervalsBegun, int estimated) {
        static final Month NONE = new Month(0, 0, 0, 0);

        Month plus(double moreKwh, double moreHours, int begun, int estimates) {
            return new Month(kwh + moreKwh, hours + moreHours, intervalsBegun + begun, estimated + estimates);
        }
    }

    /**
     * Puts intervals in order, takes a repeated one once, leaves out what overlaps, and says all that and every gap,
     * estimate and negative value.
     */
    static UseChannel cleaned(
            String meter, Flow flow, ZoneRules clock, List<UseInterval> read, List<UseFinding> findings) {
        return new UseCleaning(meter, flow, clock, findings).of(read);
    }

    public Instant start() {
        return intervals.get(0).start();
    }

    public Instant end() {
        return intervals.get(intervals.size() - 1).end();
    }

    public double kwh() {
        return intervals.stream().mapToDouble(UseInterval::kwh).sum();
    }

    public long estimated() {
        return intervals.stream().filter(UseInterval::estimated).count();
    }

    /** By calendar month of the meter's own clock; an interval that crosses months is split by time. */
    public NavigableMap<YearMonth, Month> months() {
        NavigableMap<YearMonth, Month> months = new TreeMap<>();
        intervals.forEach(interval -> add(months, interval));
        return months;
    }

    private void add(NavigableMap<YearMonth, Month> months, UseInterval interval) {
        Instant from = interval.start();
        boolean first = true;
        while (from.isBefore(interval.end())) {
            YearMonth month = monthOf(from);
            Instant next = startOf(month.plusMonths(1));
            Instant to = next.isBefore(interval.end()) ? next : interval.end();
            double hours = (to.toEpochMilli() - from.toEpochMilli()) / 3_600_000.0;
            Month before = months.getOrDefault(month, Month.NONE);
            int begun = first ? 1 : 0;
            months.put(
                    month,
                    before.plus(
                            interval.kwh() * hours / interval.hours(), hours, begun, interval.estimated() ? begun : 0));
            from = to;
            first = false;
        }
    }

    YearMonth monthOf(Instant instant) {
        return YearMonth.from(instant.atOffset(clock.getOffset(instant)));
    }

    Instant startOf(YearMonth month) {
        var local = month.atDay(1).atStartOfDay();
        ZoneOffset offset = clock.getOffset(local);
        return local.toInstant(offset);
    }

    /** The same channel with only what lies wholly or partly after this instant. */
    List<UseInterval> since(Instant instant) {
        List<UseInterval> kept = new ArrayList<>();
        for (UseInterval interval : intervals) {
            if (interval.end().isAfter(instant)) {
                kept.add(interval.start().isBefore(instant) ? part(interval, instant) : interval);
            }
        }
        return kept;
    }

    private static UseInterval part(UseInterval whole, Instant from) {
        double hours = (whole.end().toEpochMilli() - from.toEpochMilli()) / 3_600_000.0;
        return new UseInterval(from, whole.end(), whole.kwh() * hours / whole.hours(), whole.estimated());
    }
}
