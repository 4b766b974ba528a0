package org.plumbrow.calc.outage.ranking;

/**
 * Weather in which the gear is not opened. Source: common practice (gust 25 mph, no rain or snow at open gear, no lightning
 * within two hours); the shares of chance are a house rule.
 *
 * @param gustMPerS most gust
 * @param coldC least air temperature
 * @param rainPercent most chance of rain or snow
 * @param lightningPercent most chance of lightning
 * @param typicalPercent a typical year rules an hour out when the limit is passed on more than so many of 100 such days
 * @param lookPercent from here on a chance is pointed out
 */
public record WeatherLimits(
        double gustMPerS,
        double coldC,
        double rainPercent,
        double lightningPercent,
        double typicalPercent,
        double lookPercent) {

    /** 25 mph and -20 degC. */
    public static final WeatherLimits USUAL = new WeatherLimits(11.176, -20, 50, 20, 50, 20);

    /** "In the window and two hours after it." */
    public static final int AFTER_MINUTES = 120;
    /** Back half an hour after the last thunder. */
    public static final int BEFORE_LIGHTNING_MINUTES = 30;
}
