package org.plumbrow.calc.energy.weather;

import static org.plumbrow.calc.energy.sun.HourOfYear.HOURS;

import java.util.List;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.sun.HourOfYear;
import org.plumbrow.calc.energy.sun.SunTrack;

/**
 * Makes a typical year from twelve monthly means: the days of a month by the clearness distribution of Bendt,
 * Collares-Pereira and Rabl, their hours by Collares-Pereira and Rabl, the diffuse by the daily correlation of Erbs,
 * Klein and Duffie with the hourly shares of Liu and Jordan, air temperature by the mean day of Erbs (1983). No chance
 * is in it: the same means give the same year. Each month's global, temperature and wind come out as given.
 */
final class MadeYear {

    /** No month anywhere lets more of the sun through. */
    private static final double CLEAREST_MONTH = 0.85;

    private static final double LOW_SUN = 0.05;
    private static final double MOST_BEAM = 0.85;

    private final MonthlyMeans means;
    private final SunTrack sun;
    private final double[][] columns = new double[Column.COUNT][HOURS];

    MadeYear(MonthlyMeans means) {
        this.means = means;
        this.sun = SunTrack.over(means.place());
        java.util.Arrays.fill(columns[Column.HUMIDITY.ordinal()], Double.NaN);
        for (int month = 1; month <= HourOfYear.MONTHS; month++) {
            make(month);
        }
    }

    WeatherYear year() {
        WeatherFinding said = WeatherFinding.warning(
                0,
                "No weather file: this year was made from twelve monthly means (Bendt, Collares-Pereira and Rabl; "
                        + "Erbs, Klein and Duffie).",
                MonthlyMeansError.SENTENCE);
        return new WeatherYear(WeatherYear.Origin.MONTHLY_MEANS, "", means.place(), columns, List.of(said));
    }

    private void make(int month) {
        int days = HourOfYear.daysIn(month);
        int firstDay = HourOfYear.firstOf(month) / 24;
        SunOfDay[] suns = new SunOfDay[days];
        double outside = 0;
        for (int day = 0; day < days; day++) {
            suns[day] = new SunOfDay(sun, firstDay + day);
            outside += suns[day].outsideKwhPerM2() / days;
        }
        double wanted = means.ghiKwhPerM2Day()[month - 1];
        new Range(0, CLEAREST_MONTH * outside, MonthlyMeans.GHI.unit())
                .check("mean daily radiation of month " + month, wanted);
        double clearness = outside > 0 ? wanted / outside : 0;
        double[] kt = fitted(BendtDays.of(clearness, days), suns, wanted);
        for (int day = 0; day < days; day++) {
            makeDay(firstDay + day, suns[day], kt[day]);
            air(firstDay + day, month, clearness);
        }
    }

    /** The days' clearness scaled so that the month's mean comes out. */
    private static double[] fitted(double[] kt, SunOfDay[] suns, double wanted) {
        double made = 0;
        for (int day = 0; day < kt.length; day++) {
            made += kt[day] * suns[day].outsideKwhPerM2() / kt.length;
        }
        for (int day = 0; day < kt.length; day++) {
            kt[day] *= made > 0 ? wanted / made : 0;
        }
        return kt;
    }

    private void makeDay(int day, SunOfDay shape, double kt) {
        double globalWh = 1000 * kt * shape.outsideKwhPerM2();
        double diffuseWh = globalWh * shape.diffuseOfDay(kt);
        for (int at = 0; at < 24; at++) {
            int hour = day * 24 + at;
            double global = globalWh * shape.globalShare(at);
            double diffuse = Math.min(global, diffuseWh * shape.diffuseShare(at));
            double up = sun.up(hour);
            double most = MOST_BEAM * sun.extraterrestrialWPerM2(hour);
            double beam = up > LOW_SUN ? Math.min(most, (global - diffuse) / up) : 0;
            columns[Column.GHI.ordinal()][hour] = global;
            columns[Column.DNI.ordinal()][hour] = beam;
            columns[Column.DHI.ordinal()][hour] = global - beam * Math.max(0, up);
        }
    }

    /**
     * Mean day of the air: (T - mean) / A = 0.4632 cos(t - 3.805) + 0.0984 cos(2t - 0.360) + 0.0168 cos(3t - 0.822) +
     * 0.0138 cos(4t - 3.513), t = 2 pi (h - 1) / 24, A = 25.8 k - 5.21 K. Source: Erbs, Klein and Beckman, ASHRAE
     * Journal 25(6), 1983.
     */
    private void air(int day, int month, double clearness) {
        double swing = Math.max(0, 25.8 * clearness - 5.21);
        for (int at = 0; at < 24; at++) {
            double t = 2 * Math.PI * at / 24;
            double shape = 0.4632 * Math.cos(t - 3.805)
                    + 0.0984 * Math.cos(2 * t - 0.360)
                    + 0.0168 * Math.cos(3 * t - 0.822)
                    + 0.0138 * Math.cos(4 * t - 3.513);
            columns[Column.AIR.ordinal()][day * 24 + at] = means.airC()[month - 1] + swing * shape;
            columns[Column.WIND.ordinal()][day * 24 + at] = means.windMPerS()[month - 1];
        }
    }
}
