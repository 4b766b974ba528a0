package org.plumbrow.calc.planning;

/**
 * Something in the plan's input that cannot hold, in words a person can act on.
 *
 * @param activityId the activity that it concerns
 * @param sentence what is wrong and what that does to the plan
 */
public record Finding(Kind kind, String activityId, String sentence) {

    /** What is wrong; those that {@link #unplanned} leave the activity without a date. */
    public enum Kind {
        NO_CREW(true),
        NO_EQUIPMENT(true),
        CIRCLE(true),
        NO_ROOM(true),
        BLOCKED(true),
        PIN_BEFORE_PREDECESSOR(false),
        PIN_TOO_EARLY(false),
        PIN_ON_DAY_OFF(false),
        PIN_DURING_ABSENCE(false),
        PIN_WITHOUT_SKILL(false),
        BOOKED_TWICE(false),
        EQUIPMENT_SHORT(false),
        TWO_CREWS(false);

        private final boolean unplanned;

        Kind(boolean unplanned) {
            this.unplanned = unplanned;
        }

        public boolean unplanned() {
            return unplanned;
        }
    }
}
