package org.plumbrow.calc.outage.ranking;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.OptionalInt;
import org.plumbrow.calc.ridethrough.GeneratorCover;

/**
 * A generator on the site.
 *
 * @param cover what it carries, and which of what is asked it meets; its days since the last run are not looked at here
 * @param runs days on which it ran, or is to run, under the farm's real load
 */
public record GeneratorDays(GeneratorCover cover, List<LocalDate> runs) {

    public GeneratorDays {
        runs = List.copyOf(runs);
    }

    /** Days from the last run to that day; empty when there is none before it. */
    OptionalInt daysSinceRun(LocalDate day) {
        return runs.stream()
                .filter(run -> !run.isAfter(day))
                .mapToInt(run -> Math.toIntExact(ChronoUnit.DAYS.between(run, day)))
                .min();
    }
}
