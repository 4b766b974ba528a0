package org.plumbrow.calc.finance.use;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.plumbrow.calc.finance.use.EspiFeed.Entry;
import org.plumbrow.calc.finance.use.EspiFeed.Reading;

/** What the numbers of a reading type mean. */
final class EspiUnit {

    private static final int WATT_HOURS = 72;
    private static final int WATTS = 38;
    private static final int ELECTRICITY = 1;
    private static final Set<Integer> ELECTRIC = Set.of(0, 1, 2);
    private static final Set<Integer> REGISTERS = Set.of(2, 3, 9);
    private static final int AMOUNT = 4;
    private static final Set<Integer> ESTIMATED = Set.of(8, 9);

    private EspiUnit() {}

    static void refuseUnlessEnergy(Entry type) {
        if (!ELECTRIC.contains(type.number("commodity", ELECTRICITY))) {
            throw new UseRefused("These readings are not of electricity.", "Bring the electric meter's file.");
        }
        int unit = type.number("uom", WATT_HOURS);
        if (unit == WATTS) {
            throw new UseRefused(
                    "These readings are power in watts, not energy.", "Ask the utility for energy (kWh) by interval.");
        }
        if (unit != WATT_HOURS) {
            throw new UseRefused(
                    "These readings are in unit %d, not in watt-hours.".formatted(unit),
                    "Ask the utility for energy (kWh) by interval.");
        }
        int kind = type.number("accumulationBehaviour", AMOUNT);
        if (kind != AMOUNT && kind != 0 && !REGISTERS.contains(kind)) {
            throw new UseRefused(
                    "These readings are momentary values, not amounts.",
                    "Ask the utility for energy (kWh) by interval.");
        }
    }

    static double kwhPerUnit(Entry type) {
        return Math.pow(10, type.number("powerOfTenMultiplier", 0)) / 1000;
    }

    static boolean isRegister(Entry type) {
        return REGISTERS.contains(type.number("accumulationBehaviour", AMOUNT));
    }

    static List<UseInterval> intervals(List<Reading> readings, double kwhPerUnit) {
        List<UseInterval> intervals = new ArrayList<>();
        for (Reading reading : readings) {
            if (reading.durationS() <= 0) {
                throw new UseRefused(
                        "A reading at %s has no duration.".formatted(Instant.ofEpochSecond(reading.startS())),
                        "Ask the utility for a whole file.");
            }
            intervals.add(new UseInterval(
                    Instant.ofEpochSecond(reading.startS()),
                    Instant.ofEpochSecond(reading.startS() + reading.durationS()),
                    reading.value() * kwhPerUnit,
                    ESTIMATED.contains(reading.quality())));
        }
        return intervals;
    }

    /** A register counts on: the use is what lies between two readings. */
    static List<UseInterval> between(List<Reading> readings, double kwhPerUnit, List<UseFinding> findings) {
        List<Reading> sorted = readings.stream()
                .sorted(Comparator.comparingLong(Reading::startS))
                .toList();
        List<UseInterval> intervals = new ArrayList<>();
        for (int at = 1; at < sorted.size(); at++) {
            Reading before = sorted.get(at - 1);
            Reading after = sorted.get(at);
            if (after.value() < before.value()) {
                throw new UseRefused(
                        "The register goes back at %s.".formatted(Instant.ofEpochSecond(after.startS())),
                        "Ask the utility for use by interval.");
            }
            if (after.startS() > before.startS()) {
                intervals.add(new UseInterval(
                        Instant.ofEpochSecond(before.startS()),
                        Instant.ofEpochSecond(after.startS()),
                        (after.value() - before.value()) * kwhPerUnit,
                        ESTIMATED.contains(after.quality())));
            }
        }
        findings.add(UseFinding.note(
                "The file holds register readings.", "The use was taken as what lies between two readings."));
        return intervals;
    }

    static Optional<UseFinding> summaryDifference(Entry summary, List<UseChannel> channels) {
        String total = "overallConsumptionLastPeriod";
        if (summary.field(total + "/value").isEmpty() || summary.number(total + "/uom", WATT_HOURS) != WATT_HOURS) {
            return Optional.empty();
        }
        Instant from = Instant.ofEpochSecond(summary.number("billingPeriod/start", 0));
        Instant to = from.plusSeconds(summary.number("billingPeriod/duration", 0));
        double said = summary.number(total + "/value", 0)
                * Math.pow(10, summary.number(total + "/powerOfTenMultiplier", 0))
                / 1000;
        double read = channels.stream()
                .filter(channel -> channel.flow() != Flow.RECEIVED)
                .flatMap(channel -> channel.intervals().stream())
                .filter(interval ->
                        !interval.start().isBefore(from) && !interval.end().isAfter(to))
                .mapToDouble(UseInterval::kwh)
                .sum();
        if (read == 0 || Math.abs(said - read) <= 0.01 * read) {
            return Optional.empty();
        }
        return Optional.of(UseFinding.note(
                "The file's summary says %,.1f kWh, its readings of that period add up to %,.1f kWh."
                        .formatted(said, read),
                "The readings were taken."));
    }
}
