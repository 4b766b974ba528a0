package org.plumbrow.calc.energy.sun;

/** The 8,760 hours of a year without a leap day, counted from 0, and the months they belong to. */
public final class HourOfYear {

    public static final int HOURS = 8760;
    public static final int MONTHS = 12;

    private static final int[] DAYS_BEFORE = {0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365};
    private static final byte[] MONTH_OF_DAY = monthOfDay();

    private HourOfYear() {}

    /**
     * @param month 1 to 12
     * @param day day of the month, from 1
     * @param hourEnding number of the hour as weather files write it, 1 to 24, naming the end of the interval
     * @return hour of the year, 0 to 8759
     */
    public static int of(int month, int day, int hourEnding) {
        if (month < 1 || month > MONTHS || day < 1 || day > daysIn(month) || hourEnding < 1 || hourEnding > 24) {
            throw new IllegalArgumentException("no hour %d on day %d of month %d".formatted(hourEnding, day, month));
        }
        return (DAYS_BEFORE[month - 1] + day - 1) * 24 + hourEnding - 1;
    }

    /** @return 28 for February, else as usual */
    public static int daysIn(int month) {
        return DAYS_BEFORE[month] - DAYS_BEFORE[month - 1];
    }

    /** @return 1 to 12; the last hour of a month belongs to that month */
    public static int monthOf(int hour) {
        return MONTH_OF_DAY[hour / 24];
    }

    /** @return 1 to 365 */
    public static int dayOfYear(int hour) {
        return hour / 24 + 1;
    }

    /** @return 1 to 31 */
    public static int dayOfMonth(int hour) {
        return hour / 24 - DAYS_BEFORE[monthOf(hour) - 1] + 1;
    }

    /** First hour of the month, 0 to 8016. */
    public static int firstOf(int month) {
        return DAYS_BEFORE[month - 1] * 24;
    }

    private static byte[] monthOfDay() {
        byte[] months = new byte[365];
        for (int month = 1; month <= MONTHS; month++) {
            java.util.Arrays.fill(months, DAYS_BEFORE[month - 1], DAYS_BEFORE[month], (byte) month);
        }
        return months;
    }
}
