package org.plumbrow.calc.finance.use;

import java.time.Duration;
import java.time.Instant;
import org.plumbrow.calc.Range;

/**
 * Electricity metered in one span of time.
 *
 * @param start included
 * @param end excluded, after the start
 * @param kwh in that span, -1,000,000 to 100,000,000; below zero is odd but kept
 * @param estimated the utility estimated it
 */
public record UseInterval(Instant start, Instant end, double kwh, boolean estimated) {

    public static final Range KWH = new Range(-1_000_000, 100_000_000, "kWh");

    /** @throws Range.OutOfRange if the energy is outside its range or not a number */
    public UseInterval {
        KWH.check("use", kwh);
        if (!start.isBefore(end)) {
            throw new IllegalArgumentException("interval from " + start + " to " + end + " is empty");
        }
    }

    public double hours() {
        return Duration.between(start, end).toMillis() / 3_600_000.0;
    }
}
