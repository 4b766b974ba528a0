package org.plumbrow.calc.ridethrough.house;

import org.plumbrow.calc.Range;

/**
 * The air in a house at one moment.
 *
 * @param airC -20 to 60
 * @param humidityRatio kg of water per kg of dry air
 * @param co2Percent by volume, 0 to 100; 0.3 is usual in a full house
 */
public record HouseAir(double airC, double humidityRatio, double co2Percent) {

    public static final Range AIR = new Range(-60, 60, "degC");
    /** Usual in a house whose fans run: 3,000 ppm (University of Kentucky poultry manual, chapter 7). */
    public static final double USUAL_CO2_PERCENT = 0.3;

    public static HouseAir of(double airC, double relativeHumidityPercent) {
        AIR.check("air temperature", airC);
        return new HouseAir(airC, MoistAir.humidityRatio(airC, relativeHumidityPercent), USUAL_CO2_PERCENT);
    }

    public double relativeHumidityPercent() {
        return MoistAir.relativeHumidityPercent(airC, humidityRatio);
    }

    public double thi() {
        return MoistAir.thi(airC, relativeHumidityPercent());
    }
}
