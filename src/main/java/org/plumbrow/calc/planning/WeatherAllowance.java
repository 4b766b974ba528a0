package org.plumbrow.calc.planning;

import java.time.Month;
import java.util.Map;

/**
 * Share of the working time outdoors that weather is expected to take, by month, 0 to 0.9. A half-day of an outdoor
 * work counts for the rest, so work of n half-days takes more of them in a wet month.
 */
public record WeatherAllowance(Map<Month, Double> lostShare) {

    public static final WeatherAllowance NONE = new WeatherAllowance(Map.of());

    public WeatherAllowance {
        lostShare = Map.copyOf(lostShare);
        lostShare.forEach((month, share) -> {
            if (!(share >= 0 && share <= 0.9)) {
                throw new IllegalArgumentException("share lost in " + month + " is outside 0 to 0.9: " + share);
            }
        });
    }

    public double workedShare(Month month) {
        return 1 - lostShare.getOrDefault(month, 0.0);
    }
}
