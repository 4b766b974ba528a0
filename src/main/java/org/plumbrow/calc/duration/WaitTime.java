package org.plumbrow.calc.duration;

/**
 * How long somebody else takes: one row of a branch's table.
 *
 * @param days least, usual and most
 * @param meanDays as printed beside the row
 * @param source empty when it is common practice without a source
 */
public record WaitTime(
        String code, String words, DayKind dayKind, Spread days, double meanDays, Shape shape, String source) {

    /** Whose days are counted. */
    public enum DayKind {
        WORKING("working days"),
        CALENDAR("calendar days");

        private final String words;

        DayKind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** How the wait is spread between its points. */
    public enum Shape {
        /** Between least and most, with the usual as its peak. */
        PERT,
        /** Measured: the points are the 10, 50 and 90 of 100. */
        LOG_NORMAL
    }

    public WaitTime {
        if (!(meanDays >= days.low() && meanDays <= days.high())) {
            throw new IllegalArgumentException("mean of " + code + " lies outside its least and most");
        }
    }

    public String sourceWords() {
        return source.isEmpty() ? "common practice, no source" : source;
    }
}
