package org.plumbrow.calc.outage;

/** "45 min", "3 h 30 min", "42 h" from a day on: how the core's own sentences write a stretch of time. */
public final class MinuteWords {

    private static final int MINUTES_A_DAY = 24 * 60;

    private MinuteWords() {}

    /** @param minutes finite; what is less than a minute is left away */
    public static String of(double minutes) {
        long whole = (long) Math.floor(minutes + 1e-6);
        if (whole < 60) {
            return whole + " min";
        }
        return whole / 60 + " h" + (whole < MINUTES_A_DAY ? " %02d min".formatted(whole % 60) : "");
    }
}
