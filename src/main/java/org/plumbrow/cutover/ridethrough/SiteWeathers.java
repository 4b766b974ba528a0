package org.plumbrow.cutover.ridethrough;

import java.time.ZoneId;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.estimate.EnergyInputs;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.estimate.Estimates;
import org.springframework.stereotype.Component;

/** The weather that a project's estimate is made with, for its hours without power. */
@Component
public class SiteWeathers {

    private final Estimates estimates;

    private final Forecasts forecasts;

    SiteWeathers(Estimates estimates, Forecasts forecasts) {
        this.estimates = estimates;
        this.forecasts = forecasts;
    }

    /** @return empty while the library has no weather for the site or its array is not known */
    public Optional<SiteWeather> of(UUID projectId, ZoneId zone) {
        return estimates.inputs(projectId).map(inputs -> of(inputs, zone, forecasts.of(projectId)));
    }

    private static SiteWeather of(EnergyInputs inputs, ZoneId zone, Forecasts.Kept forecast) {
        var hours = forecast.hours();
        EstimateFacts.Weather weather = inputs.weather();
        return new SiteWeather(
                inputs.site().weather(),
                zone,
                weather.name() + ", " + weather.kind() + (weather.invented() ? ", made up" : "")
                        + (hours.isEmpty() ? "" : "; a forecast for " + hours.size() + " h goes before it"),
                hours);
    }
}
