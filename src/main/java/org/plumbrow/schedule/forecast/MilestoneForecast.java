package org.plumbrow.schedule.forecast;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.duration.Milestone;

/**
 * When a milestone of a project is likely to be reached, as a plan is played many times.
 *
 * @param evenChance reached by then in one of two runs
 * @param fourInFive reached by then in four of five
 * @param nineteenInTwenty reached by then in nineteen of twenty
 * @param kept how likely its promise is kept; empty where nothing was promised
 * @param drivers what binds the date, the strongest first; empty where nobody asks
 * @param runs how often the plan was played
 */
public record MilestoneForecast(
        UUID projectId,
        Milestone milestone,
        LocalDate evenChance,
        LocalDate fourInFive,
        LocalDate nineteenInTwenty,
        Optional<Kept> kept,
        List<DrivenBy> drivers,
        int runs,
        Instant madeAt) {

    public MilestoneForecast {
        drivers = List.copyOf(drivers);
    }

    /** @param until the last day that keeps the promise @param chance share of the runs, 0 to 1 */
    public record Kept(LocalDate until, double chance) {
        /** "72 of 100"; never 100 or 0 of 100 unless it is all or none. */
        public String ofHundred() {
            return MilestoneForecast.ofHundred(chance);
        }
    }

    /**
     * An activity that drives the date.
     *
     * @param project whose it is: a crew that is late elsewhere drives this date as well
     * @param share of the runs that broke the promise, of all where none did, in which it was on the chain that bound it
     */
    public record DrivenBy(UUID projectId, String project, String activity, double share) {
        public String ofHundred() {
            return MilestoneForecast.ofHundred(share);
        }
    }

    static String ofHundred(double share) {
        long rounded = Math.round(100 * share);
        if (rounded == 0 && share > 0) {
            return "fewer than 1 of 100";
        }
        return rounded == 100 && share < 1 ? "more than 99 of 100" : rounded + " of 100";
    }
}
