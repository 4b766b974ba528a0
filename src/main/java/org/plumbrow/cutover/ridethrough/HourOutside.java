package org.plumbrow.cutover.ridethrough;

/**
 * The weather of an hour with its two ends: heat is held against the warm one with the sun, cold against the other in shade.
 *
 * @param sunWPerM2 on flat ground, at its most
 */
public record HourOutside(double warmC, double coldC, double relativeHumidityPercent, double sunWPerM2) {

    private static final double STEP_K = 2;
    private static final double STEP_HUMIDITY = 20;
    private static final double STEP_SUN = 250;

    /** To the next step on the careful side of either end, so that many hours share one answer. */
    HourOutside coarse() {
        return new HourOutside(
                Math.ceil(warmC / STEP_K) * STEP_K,
                Math.floor(coldC / STEP_K) * STEP_K,
                Math.min(100, Math.ceil(relativeHumidityPercent / STEP_HUMIDITY) * STEP_HUMIDITY),
                Math.ceil(sunWPerM2 / STEP_SUN) * STEP_SUN);
    }
}
