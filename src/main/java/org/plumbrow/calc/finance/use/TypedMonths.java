package org.plumbrow.calc.finance.use;

import java.time.Instant;
import java.time.YearMonth;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;

/** Use by calendar month, as somebody types it from the bills. */
public final class TypedMonths {

    private TypedMonths() {}

    /**
     * @param first month of the first value
     * @param kwh one value for each month in order; at least one
     * @throws org.plumbrow.calc.Range.OutOfRange if a value cannot be a month's use
     */
    public static UseChannel of(String meter, ZoneRules clock, YearMonth first, List<Double> kwh) {
        List<UseInterval> intervals = new ArrayList<>();
        for (int at = 0; at < kwh.size(); at++) {
            intervals.add(new UseInterval(
                    start(clock, first.plusMonths(at)), start(clock, first.plusMonths(at + 1)), kwh.get(at), false));
        }
        return new UseChannel(meter, Flow.DELIVERED, clock, intervals);
    }

    private static Instant start(ZoneRules clock, YearMonth month) {
        var local = month.atDay(1).atStartOfDay();
        return local.toInstant(clock.getOffset(local));
    }
}
