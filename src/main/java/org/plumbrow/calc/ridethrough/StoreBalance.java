package org.plumbrow.calc.ridethrough;

import java.util.OptionalDouble;
import org.plumbrow.calc.Range;

/**
 * One lump of warmth behind an envelope, with a constant source in it: C dT/dt = UA (To - T) + q. Solution:
 * T = Te + (T0 - Te) exp(-t UA / C), Te = To + q / UA. A textbook balance.
 *
 * @param capacityJPerK 1 to 10^12
 * @param lossWPerK 0 to 100,000
 * @param sourceW heat made or received inside, W, -1,000,000 to 10,000,000
 * @param outsideC -60 to 60
 */
public record StoreBalance(double capacityJPerK, double lossWPerK, double sourceW, double outsideC) {

    public static final Range CAPACITY = new Range(1, 1e12, "J/K");
    public static final Range LOSS = new Range(0, 100_000, "W/K");
    public static final Range SOURCE = new Range(-1e6, 1e7, "W");
    public static final Range OUTSIDE = new Range(-60, 60, "degC");

    public StoreBalance {
        CAPACITY.check("heat capacity", capacityJPerK);
        LOSS.check("heat loss", lossWPerK);
        SOURCE.check("heat source", sourceW);
        OUTSIDE.check("temperature outside", outsideC);
    }

    /** Heat that goes in at that temperature, W; negative when it cools. */
    public double gainW(double insideC) {
        return lossWPerK * (outsideC - insideC) + sourceW;
    }

    public double kelvinPerHour(double insideC) {
        return gainW(insideC) * 3600 / capacityJPerK;
    }

    public double temperatureC(double startC, double minutes) {
        double rate = gainW(startC) / capacityJPerK;
        double perSecond = lossWPerK / capacityJPerK;
        double seconds = 60 * minutes;
        // -expm1 keeps the digits of a slow warm-up, where 1 - exp would lose them.
        return lossWPerK == 0 ? startC + rate * seconds : startC + rate / perSecond * -Math.expm1(-perSecond * seconds);
    }

    /** Minutes from start to limit; empty when it never gets there, 0 when it is there. */
    public OptionalDouble minutesTo(double startC, double limitC) {
        double way = limitC - startC;
        if (way == 0) {
            return OptionalDouble.of(0);
        }
        double rate = gainW(startC) / capacityJPerK;
        double perSecond = lossWPerK / capacityJPerK;
        double share = way / rate;
        if (rate == 0 || share < 0 || perSecond * share >= 1) {
            return OptionalDouble.empty();
        }
        double seconds = lossWPerK == 0 ? share : -Math.log1p(-perSecond * share) / perSecond;
        return OptionalDouble.of(seconds / 60);
    }

    /** Minutes as if the heat of the start went in all the time: shorter than {@link #minutesTo}, so planned with. */
    public OptionalDouble minutesAtFirstRate(double startC, double limitC) {
        double way = limitC - startC;
        double perMinute = kelvinPerHour(startC) / 60;
        return way != 0 && way / perMinute < 0 || perMinute == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(way / perMinute);
    }
}
