package org.plumbrow.calc.outage;

import java.time.LocalDateTime;
import org.plumbrow.calc.Range;

/**
 * The last minute at which one must decide to undo the work, so that the loads run again when they have to:
 * needed by − undo and close − bring the loads back − reserve. Source: common practice; undoing takes 15 to 25 min,
 * bringing the loads back 10 to 15, the reserve is 10.
 */
public record LatestReversal(LocalDateTime neededBy, int undoMinutes, int bringBackMinutes, int reserveMinutes) {

    public static final Range MINUTES = new Range(0, 240, "min");
    public static final int USUAL_UNDO = 20;
    public static final int USUAL_BRING_BACK = 15;
    public static final int USUAL_RESERVE = 10;

    public LatestReversal {
        MINUTES.check("minutes to undo", undoMinutes);
        MINUTES.check("minutes to bring the loads back", bringBackMinutes);
        MINUTES.check("minutes of reserve", reserveMinutes);
    }

    public LocalDateTime decideBy() {
        return neededBy.minusMinutes((long) undoMinutes + bringBackMinutes + reserveMinutes);
    }

    /** The latest reversal may equal the start of the outage, not precede it. */
    public boolean isPossibleFrom(LocalDateTime start) {
        return !decideBy().isBefore(start);
    }
}
