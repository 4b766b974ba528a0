package org.plumbrow.calc.energy.weather;

/**
 * One row of a file as it stands.
 *
 * @param line its line, from 1
 * @param year as written; 0 when the file says none
 * @param month as written, 1 to 12
 * @param day as written
 * @param hour number of the hour, naming the end of the interval
 * @param values {@code double[6]} in the order of {@link Column}; NaN where the file says "missing"
 */
record RawHour(int line, int year, int month, int day, int hour, double[] values) {

    double value(Column column) {
        return values[column.ordinal()];
    }

    boolean isLeapDay() {
        return month == 2 && day == 29;
    }

    /** "3/21, hour 10". */
    String when() {
        return "%d/%d, hour %d".formatted(month, day, hour);
    }
}
