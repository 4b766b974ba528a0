package org.plumbrow.calc.duration;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The rates, fixed times and waits that a branch works with. */
public final class DurationTables {

    private final Map<String, WorkRate> rates;
    private final Map<String, FixedTime> fixedTimes;
    private final Map<String, WaitTime> waits;

    public DurationTables(List<WorkRate> rates, List<FixedTime> fixedTimes, List<WaitTime> waits) {
        this.rates = byCode(rates, WorkRate::code);
        this.fixedTimes = byCode(fixedTimes, FixedTime::code);
        this.waits = byCode(waits, WaitTime::code);
    }

    private DurationTables(
            Map<String, WorkRate> rates, Map<String, FixedTime> fixedTimes, Map<String, WaitTime> waits) {
        this.rates = rates;
        this.fixedTimes = fixedTimes;
        this.waits = Map.copyOf(waits);
    }

    /** The same tables where one place answers in days of its own: a permit office. */
    public DurationTables with(Collection<WaitTime> own) {
        Map<String, WaitTime> all = new HashMap<>(waits);
        own.forEach(wait -> all.put(wait.code(), wait));
        return new DurationTables(rates, fixedTimes, all);
    }

    /** The same tables with these rates in place of those of the same code. */
    public DurationTables withRates(Collection<WorkRate> learned) {
        Map<String, WorkRate> all = new HashMap<>(rates);
        learned.forEach(rate -> all.put(rate.code(), rate));
        return new DurationTables(Map.copyOf(all), fixedTimes, waits);
    }

    private static <T> Map<String, T> byCode(List<T> rows, Function<T, String> code) {
        return rows.stream().collect(Collectors.toUnmodifiableMap(code, Function.identity()));
    }

    public WorkRate rate(String code) {
        return row(rates, code);
    }

    FixedTime fixedTime(String code) {
        return row(fixedTimes, code);
    }

    public WaitTime wait(String code) {
        return row(waits, code);
    }

    /** All rates, in no order. */
    public Collection<WorkRate> rates() {
        return rates.values();
    }

    private static <T> T row(Map<String, T> rows, String code) {
        T row = rows.get(code);
        if (row == null) {
            throw new IllegalArgumentException("the table has no row " + code);
        }
        return row;
    }
}
