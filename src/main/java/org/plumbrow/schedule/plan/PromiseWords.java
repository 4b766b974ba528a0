package org.plumbrow.schedule.plan;

/** How a promise stands in a plan, in words and as a shape. */
public final class PromiseWords {

    private PromiseWords() {}

    /** "holds, 12 days spare", "at risk, 1 day spare", "breaks by 4 days". */
    public static String outlook(PlannedPromise promise) {
        return switch (promise.outlook()) {
            case HOLDS -> "holds, " + days(promise.daysSpare()) + " spare";
            case AT_RISK -> "at risk, " + days(promise.daysSpare()) + " spare";
            case BREAKS -> "breaks by " + days(promise.daysLate());
            case NO_DATE -> "has no date";
        };
    }

    public static String shape(PlannedPromise promise) {
        return switch (promise.outlook()) {
            case HOLDS -> "done";
            case AT_RISK -> "risk";
            case BREAKS -> "trouble";
            case NO_DATE -> "unknown";
        };
    }

    private static String days(int days) {
        return days + (days == 1 ? " day" : " days");
    }
}
