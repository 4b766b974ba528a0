package org.plumbrow.calc.finance.use;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.energy.sun.HourOfYear;

/**
 * A site's use in the 8,760 hours of a typical year, in standard time as the weather is, so that it can stand beside
 * production. Made of the last twelve months; 29 February is left out; an hour that is not known takes the mean of the same
 * hour of its month.
 *
 * @param kwh {@code double[8760]}
 * @param knownShare of the hours, 0 to 1, the least of all meters
 */
public record UseHours(double[] kwh, double knownShare) {

    private static final double AN_HOUR = 1.001;
    private static final double LEAST_SHARE = 0.5;

    /** @return empty when a meter is read less often than hourly, or knows less than half of the year's hours */
    public static Optional<UseHours> of(List<UseChannel> channels) {
        double[] sum = new double[HourOfYear.HOURS];
        double least = 1;
        List<UseChannel> use = channels.stream()
                .filter(channel -> channel.flow() != Flow.RECEIVED)
                .toList();
        for (UseChannel channel : use) {
            HourTally tally = new HourTally(channel);
            least = Math.min(least, tally.knownShare());
            tally.addTo(sum);
        }
        boolean hourly =
                use.stream().allMatch(channel -> channel.intervals().stream().allMatch(each -> each.hours() < AN_HOUR));
        return hourly && !use.isEmpty() && least >= LEAST_SHARE
                ? Optional.of(new UseHours(sum, least))
                : Optional.empty();
    }

    /** One meter's energy hour by hour. */
    private static final class HourTally {

        private final double[] kwh = new double[HourOfYear.HOURS];
        private final double[] hours = new double[HourOfYear.HOURS];

        HourTally(UseChannel channel) {
            Instant from = channel.end()
                    .atOffset(channel.clock().getOffset(channel.end()))
                    .minusYears(1)
                    .toInstant();
            for (UseInterval interval : channel.since(from)) {
                add(channel, interval);
            }
        }

        private void add(UseChannel channel, UseInterval interval) {
            Instant at = interval.start();
            while (at.isBefore(interval.end())) {
                LocalDateTime standard =
                        LocalDateTime.ofInstant(at, channel.clock().getStandardOffset(at));
                Instant next = at.plusSeconds(3600 - standard.getMinute() * 60L - standard.getSecond());
                Instant to = next.isBefore(interval.end()) ? next : interval.end();
                double part = (to.toEpochMilli() - at.toEpochMilli()) / 3_600_000.0;
                if (standard.getMonthValue() != 2 || standard.getDayOfMonth() != 29) {
                    int hour =
                            HourOfYear.of(standard.getMonthValue(), standard.getDayOfMonth(), standard.getHour() + 1);
                    kwh[hour] += interval.kwh() * part / interval.hours();
                    hours[hour] += part;
                }
                at = to;
            }
        }

        double knownShare() {
            double known = 0;
            for (double each : hours) {
                known += Math.min(1, each);
            }
            return known / HourOfYear.HOURS;
        }

        void addTo(double[] sum) {
            double[][] means = meansOfMonths();
            for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
                double usual = means[HourOfYear.monthOf(hour) - 1][hour % 24];
                sum[hour] += hours[hour] > 0 ? kwh[hour] / hours[hour] : usual;
            }
        }

        private double[][] meansOfMonths() {
            double[][] means = new double[12][24];
            double[][] counts = new double[12][24];
            for (int hour = 0; hour < HourOfYear.HOURS; hour++) {
                means[HourOfYear.monthOf(hour) - 1][hour % 24] += kwh[hour];
                counts[HourOfYear.monthOf(hour) - 1][hour % 24] += hours[hour];
            }
            for (int month = 0; month < 12; month++) {
                for (int hour = 0; hour < 24; hour++) {
                    means[month][hour] = counts[month][hour] > 0 ? means[month][hour] / counts[month][hour] : 0;
                }
            }
            return means;
        }
    }
}
