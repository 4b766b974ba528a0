package org.plumbrow.calc.planning;

/**
 * An activity that must be finished first, and how long after.
 *
 * @param lagHalfDays working half-days between that finish and this start, 0 or more
 * @param lagCalendarDays whole calendar days between, 0 or more (concrete cures on Sundays too)
 */
public record Predecessor(String activityId, int lagHalfDays, int lagCalendarDays) {

    public Predecessor {
        if (lagHalfDays < 0 || lagCalendarDays < 0) {
            throw new IllegalArgumentException("lag after " + activityId + " must not be negative");
        }
    }

    public static Predecessor of(String activityId) {
        return new Predecessor(activityId, 0, 0);
    }
}
