package org.plumbrow.calc.outage.ranking;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.sun.SunPosition;

/** When the sun rises and sets on the site's clock. */
public record Daylight(LocalTime rises, LocalTime sets) {

    /**
     * Source: Solar Position Algorithm of Reda and Andreas (NREL/TP-560-34302) through the library solarpositioning; empty
     * where the sun does not rise or does not set.
     */
    public static Optional<Daylight> on(LocalDate day, Place place, ZoneId zone) {
        ZonedDateTime noon = day.atTime(LocalTime.NOON).atZone(zone);
        SunriseResult sun =
                SPA.calculateSunriseTransitSet(noon, place.latitudeDeg(), place.longitudeDeg(), SunPosition.DELTA_T_S);
        return sun instanceof SunriseResult.RegularDay regular
                ? Optional.of(new Daylight(
                        regular.sunrise().withZoneSameInstant(zone).toLocalTime(),
                        regular.sunset().withZoneSameInstant(zone).toLocalTime()))
                : Optional.empty();
    }
}
