package org.plumbrow.schedule.plan;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * What a plan does to the promise of a project.
 *
 * @param milestone as people call it: "system on"
 * @param promisedOn the last day that keeps it
 * @param finish of the milestone; empty when one of its activities has no date
 * @param halfDaysSpare working half-days before the end of the promised day; 0 when it is late
 * @param bindingActivityId the activity whose finish is the milestone's
 * @param lateAlone half-days late in any plan, for its own chain of work and waits; empty where nothing was proved
 */
public record PlannedPromise(
        UUID projectId,
        String milestone,
        LocalDate promisedOn,
        Optional<HalfDay> finish,
        int halfDaysLate,
        int halfDaysSpare,
        Optional<UUID> bindingActivityId,
        Optional<Integer> lateAlone) {

    /** A promise with less than so many working half-days to spare is at risk: three days of rain break it. */
    private static final int AT_RISK_BELOW_HALF_DAYS = 6;

    /** How a promise stands in a plan. */
    public enum Outlook {
        HOLDS,
        AT_RISK,
        BREAKS,
        NO_DATE
    }

    public Outlook outlook() {
        if (finish.isEmpty()) {
            return Outlook.NO_DATE;
        }
        if (halfDaysLate > 0) {
            return Outlook.BREAKS;
        }
        return halfDaysSpare < AT_RISK_BELOW_HALF_DAYS ? Outlook.AT_RISK : Outlook.HOLDS;
    }

    /** Working days late, a begun one counted. */
    public int daysLate() {
        return (halfDaysLate + 1) / 2;
    }

    /** Whole working days to spare. */
    public int daysSpare() {
        return halfDaysSpare / 2;
    }
}
