package org.plumbrow.calc.duration;

import org.plumbrow.calc.Range;

/**
 * Finished work of one row of the table, from which its pace is learned.
 *
 * @param quantity in the row's units, 0 or more: a day without anything done counts too
 * @param crewDays of the row's own crew that it took, set-up left out, more than 0
 */
public record DoneWork(double quantity, double crewDays) {

    /** Crew-days of one work. */
    public static final Range CREW_DAYS = new Range(0.01, 1_000, "crew-days");

    public DoneWork {
        CREW_DAYS.check("crew-days", crewDays);
        if (!(quantity >= 0)) {
            throw new IllegalArgumentException("finished work must not be negative: " + quantity);
        }
    }

    /**
     * Work with a row's rate, held against what it was planned to take. The days of an activity are shared among its
     * rows as they were planned.
     *
     * @param quantity of the whole activity
     * @param share of the row's quantity that was done, 0 to 1
     * @param taken days it took by the days planned for the whole activity with that crew
     */
    public static DoneWork of(WorkRate rate, double quantity, double share, double taken) {
        double planned = quantity / rate.typical();
        return new DoneWork(quantity * share, Math.max(CREW_DAYS.least(), Math.min(CREW_DAYS.most(), planned * taken)));
    }
}
