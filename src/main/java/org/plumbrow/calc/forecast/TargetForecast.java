package org.plumbrow.calc.forecast;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * When a milestone is reached.
 *
 * @param evenChance reached by then in one of two runs (P50)
 * @param fourInFive in four of five (P80)
 * @param nineteenInTwenty in nineteen of twenty (P95)
 * @param chanceKept share of runs in which it is reached by the last day that keeps the promise
 * @param drivers what binds the date, the strongest first, at most ten
 */
public record TargetForecast(
        Target target,
        LocalDate evenChance,
        LocalDate fourInFive,
        LocalDate nineteenInTwenty,
        Optional<Double> chanceKept,
        List<Driver> drivers) {

    public TargetForecast {
        drivers = List.copyOf(drivers);
    }
}
