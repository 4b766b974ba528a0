package org.plumbrow.calc.finance.use;

import java.time.Instant;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A site's use in the twelve calendar months of a year, from the last twelve months that each meter has. Billing periods
 * need not match months: what lies in the same month of two years is put together. A month known for at least half of its
 * hours stands for the whole; one known for less is missing.
 *
 * @param months January to December
 * @param findings what was left out or filled up
 */
public record UseYear(List<Month> months, List<UseFinding> findings) {

    private static final double LEAST_SHARE = 0.5;
    private static final double WHOLE = 0.9999;

    /**
     * @param kwh of the whole month; empty when too little of it is known
     * @param knownShare of its hours, 0 to 1, the least of all meters
     */
    public record Month(Optional<Double> kwh, double knownShare) {}

    public UseYear {
        months = List.copyOf(months);
        findings = List.copyOf(findings);
    }

    /**
     * @param channels of all meters of the site; what the site gives to the utility is left aside
     * @return every month missing when there is no use at all
     */
    public static UseYear of(List<UseChannel> channels) {
        List<UseFinding> findings = new ArrayList<>();
        List<UseChannel> use = channels.stream()
                .filter(channel -> channel.flow() != Flow.RECEIVED)
                .toList();
        if (use.size() < channels.size()) {
            findings.add(UseFinding.note(
                    "The meter also counts what the site gives.", "Only what the utility delivers counts as use."));
        }
        List<List<Month>> meters = use.stream().map(UseYear::monthsOf).toList();
        List<Month> months = new ArrayList<>();
        for (int month = 0; month < 12; month++) {
            int at = month;
            months.add(together(meters.stream().map(each -> each.get(at)).toList()));
        }
        say(months, findings);
        return new UseYear(months, findings);
    }

    private static List<Month> monthsOf(UseChannel channel) {
        Instant from = channel.end()
                .atOffset(channel.clock().getOffset(channel.end()))
                .minusYears(1)
                .toInstant();
        UseChannel year = new UseChannel(channel.meter(), channel.flow(), channel.clock(), channel.since(from));
        double[] kwh = new double[12];
        double[] hours = new double[12];
        double[] whole = new double[12];
        for (Map.Entry<YearMonth, UseChannel.Month> each : year.months().entrySet()) {
            int at = each.getKey().getMonthValue() - 1;
            kwh[at] += each.getValue().kwh();
            hours[at] += each.getValue().hours();
            whole[at] = hoursOf(year, each.getKey());
        }
        List<Month> months = new ArrayList<>();
        for (int at = 0; at < 12; at++) {
            double share = whole[at] > 0 ? Math.min(1, hours[at] / whole[at]) : 0;
            months.add(new Month(share >= LEAST_SHARE ? Optional.of(kwh[at] / share) : Optional.empty(), share));
        }
        return months;
    }

    private static double hoursOf(UseChannel channel, YearMonth month) {
        return (channel.startOf(month.plusMonths(1)).toEpochMilli()
                        - channel.startOf(month).toEpochMilli())
                / 3_600_000.0;
    }

    private static Month together(List<Month> meters) {
        double least = meters.stream().mapToDouble(Month::knownShare).min().orElse(0);
        boolean known =
                !meters.isEmpty() && meters.stream().allMatch(each -> each.kwh().isPresent());
        double sum = meters.stream().mapToDouble(each -> each.kwh().orElse(0.0)).sum();
        return new Month(known ? Optional.of(sum) : Optional.empty(), least);
    }

    private static void say(List<Month> months, List<UseFinding> findings) {
        long missing = months.stream().filter(month -> month.kwh().isEmpty()).count();
        long partly = months.stream()
                .filter(month -> month.kwh().isPresent() && month.knownShare() < WHOLE)
                .count();
        if (missing > 0) {
            findings.add(UseFinding.warning(
                    "%d of 12 months are not known.".formatted(missing), "Bring the bills of the months that lack."));
        }
        if (partly > 0) {
            findings.add(UseFinding.warning(
                    "%d of 12 months are known in part.".formatted(partly),
                    "The known part stands for the whole month."));
        }
    }

    public boolean isWhole() {
        return months.stream().allMatch(month -> month.kwh().isPresent());
    }

    /** Of the year; empty when a month is missing. */
    public Optional<Double> kwhOfYear() {
        return isWhole()
                ? Optional.of(months.stream()
                        .mapToDouble(month -> month.kwh().orElse(0.0))
                        .sum())
                : Optional.empty();
    }

    /** @return {@code double[12]}, 0 for a month that is missing */
    public double[] kwhByMonth() {
        return months.stream().mapToDouble(month -> month.kwh().orElse(0.0)).toArray();
    }
}
