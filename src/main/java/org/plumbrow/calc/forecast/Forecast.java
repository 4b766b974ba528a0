package org.plumbrow.calc.forecast;

import java.util.List;
import java.util.Optional;

/**
 * What many runs of a plan say.
 *
 * @param runs how many were played
 * @param targets in the order of the question; those whose activities the plan could not place are missing
 */
public record Forecast(int runs, List<TargetForecast> targets) {

    public Forecast {
        targets = List.copyOf(targets);
    }

    public Optional<TargetForecast> of(Target target) {
        return targets.stream().filter(one -> one.target().equals(target)).findFirst();
    }
}
