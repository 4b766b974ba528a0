package org.plumbrow.calc.outage.ranking;

import org.plumbrow.calc.Normal;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.forecast.Uncertainty;
import org.plumbrow.calc.outage.ranking.LoadHours.Stands;

/**
 * Chance that the power is back before anything suffers: the share of cases in which the work takes less than the loads
 * stand and less than the next fixed need lies away. Work and ride-through are taken as independent; both have a
 * log-normal half on either side of the middle, their ends at 10 and 90 of 100. The ride-through counts in full here: it is
 * halved for planning, not for chances.
 */
final class Chance {

    private static final int NODES = 40;
    private static final int LONGEST = 2000;
    private static final double TENTH = 1.2815515655446004;
    private static final double LEAST_MINUTES = 0.01;

    private final double[] doneWithin = new double[LONGEST + 1];
    private final double[] z = new double[NODES];

    Chance(HourQuestion.WorkMinutes work) {
        // The shape knows no unit: minutes in place of days.
        Uncertainty spread = new Uncertainty.Measured(new Spread(work.low(), work.typical(), work.high()));
        for (int minute = 0; minute <= LONGEST; minute++) {
            doneWithin[minute] = spread.share(minute);
        }
        for (int node = 0; node < NODES; node++) {
            z[node] = Normal.quantile((node + 0.5) / NODES);
        }
    }

    /** @param needMinutes to the next fixed need; infinite where there is none */
    double of(Stands stands, double needMinutes) {
        double sum = 0;
        for (double node : z) {
            sum += done(Math.min(standsFor(stands, node), needMinutes));
        }
        return sum / NODES;
    }

    private double done(double minutes) {
        if (minutes >= LONGEST) {
            return 1;
        }
        int whole = (int) minutes;
        return doneWithin[whole] + (minutes - whole) * (doneWithin[whole + 1] - doneWithin[whole]);
    }

    /** Minutes at that place of the normal curve. Where an end is endless, only what lies beyond it is. */
    private static double standsFor(Stands stands, double z) {
        double middle = Math.max(LEAST_MINUTES, stands.likely());
        double end = Math.max(LEAST_MINUTES, z < 0 ? stands.shortEnd() : stands.longEnd());
        if (Double.isInfinite(stands.shortEnd())) {
            return stands.shortEnd();
        }
        if (Double.isInfinite(middle) || Double.isInfinite(end)) {
            double known = Double.isInfinite(middle) ? end : middle;
            boolean beyond = Double.isInfinite(middle) ? z > -TENTH : z > TENTH;
            return beyond ? Double.POSITIVE_INFINITY : known;
        }
        return middle * Math.pow(end / middle, Math.abs(z) / TENTH);
    }
}
