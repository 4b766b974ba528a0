package org.plumbrow.calc.ridethrough.house;

import org.plumbrow.calc.Range;

/**
 * The weather of the hour; it holds for the whole outage, and the worst hour inside a window decides.
 *
 * @param airC -60 to 60
 * @param relativeHumidityPercent 0 to 100
 * @param sunW heat that the sun brings into the house through roof and walls, W, 0 to 1,000,000
 */
public record Outdoors(double airC, double relativeHumidityPercent, double sunW) {

    public static final Range HUMIDITY = new Range(0, 100, "%");
    public static final Range SUN = new Range(0, 1_000_000, "W");

    public Outdoors {
        HouseAir.AIR.check("outdoor temperature", airC);
        HUMIDITY.check("outdoor humidity", relativeHumidityPercent);
        SUN.check("sun", sunW);
    }

    public static Outdoors shaded(double airC, double relativeHumidityPercent) {
        return new Outdoors(airC, relativeHumidityPercent, 0);
    }

    Outdoors warmerBy(double kelvin) {
        double air = Math.max(HouseAir.AIR.least(), Math.min(HouseAir.AIR.most(), airC + kelvin));
        return new Outdoors(air, relativeHumidityPercent, sunW);
    }
}
