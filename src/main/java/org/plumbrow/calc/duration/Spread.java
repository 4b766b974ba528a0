package org.plumbrow.calc.duration;

/**
 * A duration in days: short, typical, long. Of work they are its 10, 50 and 90 of 100 points, of a wait the least, the
 * usual and the most.
 */
public record Spread(double low, double typical, double high) {

    public static final Spread ZERO = new Spread(0, 0, 0);

    public Spread {
        if (!(low >= 0 && low <= typical && typical <= high)) {
            throw new IllegalArgumentException(
                    "low %s, typical %s, high %s are not in order".formatted(low, typical, high));
        }
    }

    /** Each of three added to its like; careful, for not all of them run long together. */
    public Spread plus(Spread other) {
        return new Spread(low + other.low, typical + other.typical, high + other.high);
    }

    public Spread times(double factor) {
        return new Spread(low * factor, typical * factor, high * factor);
    }

    /** Three-point mean (a + 4m + b) / 6. */
    public double mean() {
        return (low + 4 * typical + high) / 6;
    }

    /** Days as whole half-days: the nearest, at least one. Nearest, because rounding up adds a day to every short job. */
    public static int halfDays(double days) {
        return Math.max(1, Math.toIntExact(Math.round(2 * days)));
    }

    public int halfDaysLow() {
        return halfDays(low);
    }

    public int halfDaysTypical() {
        return halfDays(typical);
    }

    public int halfDaysHigh() {
        return halfDays(high);
    }
}
