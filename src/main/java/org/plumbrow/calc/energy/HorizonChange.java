package org.plumbrow.calc.energy;

import java.util.List;
import java.util.stream.IntStream;
import org.plumbrow.calc.Range;

/**
 * What another horizon does to a year's yield, and whether somebody must be told. Months are held against what their
 * weather alone spreads: year's spread times the root of 12, months taken as independent. The year is held against the
 * share by which an estimate may lie below the contract's figure (common practice, no published source).
 *
 * @param fromKwh by month, January to December, AC
 * @param toKwh the same months under the other horizon
 * @param spread of years; only its weather counts, as the estimate's own error moves both alike
 */
public record HorizonChange(List<Double> fromKwh, List<Double> toKwh, YearSpread spread) {

    /** From this loss of a year on, customer and designer are told. */
    public static final double TOLD_FROM_SHARE = 0.02;

    private static final int MONTHS = 12;
    private static final Range KWH = new Range(0, 1e9, "kWh");
    /** What shows as 0.0 %. */
    private static final double NOTHING = 0.0005;

    public HorizonChange {
        fromKwh = List.copyOf(fromKwh);
        toKwh = List.copyOf(toKwh);
        if (fromKwh.size() != MONTHS || toKwh.size() != MONTHS) {
            throw new IllegalArgumentException("a year has twelve months");
        }
        fromKwh.forEach(kwh -> KWH.check("yield of a month", kwh));
        toKwh.forEach(kwh -> KWH.check("yield of a month", kwh));
    }

    /** What follows from the change. */
    public enum Verdict {
        /** 0.0 % of the year. */
        NONE,
        /** The other horizon gives more. */
        MORE,
        /** A loss, in every month less than its weather spreads, and of the year less than is told. */
        WITHIN_A_MONTH,
        /** A loss that customer and designer are told. */
        TELL
    }

    public double fromOfYear() {
        return sum(fromKwh);
    }

    public double toOfYear() {
        return sum(toKwh);
    }

    private static double sum(List<Double> months) {
        return months.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Negative where the other horizon takes more. */
    public double changeOfYear() {
        return toOfYear() - fromOfYear();
    }

    /** Of the year, negative for a loss; 0 where there was nothing to lose. */
    public double shareOfYear() {
        return share(fromOfYear(), toOfYear());
    }

    /** @param month 1 to 12 */
    public double shareOf(int month) {
        return share(fromKwh.get(month - 1), toKwh.get(month - 1));
    }

    private static double share(double from, double to) {
        return from > 0 ? to / from - 1 : 0;
    }

    /** Standard deviation of one month's weather, as a share. */
    public double monthSpread() {
        return spread.yearShare() * Math.sqrt(MONTHS);
    }

    /** The month that loses the largest share, 1 to 12; the first of equals. */
    public int worstMonth() {
        return IntStream.rangeClosed(1, MONTHS)
                .reduce((a, b) -> shareOf(b) < shareOf(a) ? b : a)
                .orElseThrow();
    }

    public Verdict verdict() {
        double share = shareOfYear();
        if (share <= -TOLD_FROM_SHARE || shareOf(worstMonth()) < -monthSpread()) {
            return Verdict.TELL;
        }
        if (Math.abs(share) < NOTHING) {
            return Verdict.NONE;
        }
        return share > 0 ? Verdict.MORE : Verdict.WITHIN_A_MONTH;
    }
}
