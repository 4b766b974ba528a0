package org.plumbrow.cutover.daylog;

import java.time.LocalDateTime;
import org.plumbrow.calc.outage.LatestReversal;

/**
 * The latest reversal as the person in charge set it.
 *
 * @param why what needs the power by then
 */
record ReversalTime(LatestReversal latest, String why, LogEntry entry) {

    static ReversalTime of(LogState.Effective one) {
        String[] parts = String.valueOf(one.value()).split(" ");
        LatestReversal latest = new LatestReversal(
                LocalDateTime.parse(parts[0]),
                Integer.parseInt(parts[1]),
                Integer.parseInt(parts[2]),
                Integer.parseInt(parts[3]));
        String why = one.entry().reason();
        return new ReversalTime(latest, why == null ? "" : why, one.entry());
    }

    /** As an entry keeps it: needed by, undo, bring back, reserve. */
    static String written(LatestReversal latest) {
        return latest.neededBy() + " " + latest.undoMinutes() + " " + latest.bringBackMinutes() + " "
                + latest.reserveMinutes();
    }
}
