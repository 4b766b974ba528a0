package org.plumbrow.calc.energy;

import java.util.List;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.sun.HourOfYear;

/**
 * Losses between cells and inverter, one by one. They multiply: what is left is the product of (1 - loss). Source: Dobos,
 * NREL/TP-6A20-62641, 2014.
 *
 * @param lines each with its name and share of the year round
 * @param snowPercentByMonth {@code double[12]}, share of the month's energy lost under snow, 0 to 100
 */
public record Losses(List<Line> lines, double[] snowPercentByMonth) {

    public static final Range PERCENT = new Range(0, 100, "%");
    /** The list of the source with no shading in it, as that is computed here: 11.42 %. */
    public static final Losses USUAL = new Losses(
            List.of(
                    new Line("Soiling", 2),
                    new Line("Module mismatch", 2),
                    new Line("DC wiring", 2),
                    new Line("Connections", 0.5),
                    new Line("First light", 1.5),
                    new Line("Nameplate rating", 1),
                    new Line("Availability", 3)),
            new double[HourOfYear.MONTHS]);

    /** @throws Range.OutOfRange if a share is outside 0 to 100 % */
    public Losses {
        lines = List.copyOf(lines);
        if (snowPercentByMonth.length != HourOfYear.MONTHS) {
            throw new IllegalArgumentException(snowPercentByMonth.length + " months of snow in place of 12");
        }
        snowPercentByMonth = snowPercentByMonth.clone();
        for (double percent : snowPercentByMonth) {
            PERCENT.check("snow", percent);
        }
    }

    /** @param percent of what arrives at this line, 0 to 100 */
    public record Line(String name, double percent) {
        public Line {
            PERCENT.check(name, percent);
        }

        double kept() {
            return 1 - percent / 100;
        }
    }

    public static Losses of(Line... lines) {
        return new Losses(List.of(lines), new double[HourOfYear.MONTHS]);
    }

    public Losses withSnow(double[] percentByMonth) {
        return new Losses(lines, percentByMonth);
    }

    /** Share left after all lines, snow apart, 0 to 1. */
    public double kept() {
        return lines.stream().mapToDouble(Line::kept).reduce(1, (a, b) -> a * b);
    }

    /** Share left in a month, snow included. */
    public double kept(int month) {
        return kept() * (1 - snowPercentByMonth[month - 1] / 100);
    }

    /** All lines together, snow apart, %. */
    public double totalPercent() {
        return 100 * (1 - kept());
    }
}
