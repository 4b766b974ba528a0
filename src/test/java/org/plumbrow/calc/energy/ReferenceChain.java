package org.plumbrow.calc.energy;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.calc.energy.sun.SunTrack;
import org.plumbrow.calc.energy.weather.ReferenceWeather;
import org.plumbrow.calc.energy.weather.WeatherYear;

/** The settings of the reference tables: 1 kW, 14 % of losses, inverter of 1 / 1.2 kW. */
final class ReferenceChain {

    static final Losses LOSSES = Losses.of(new Losses.Line("all", 14));
    static final Inverter INVERTER = new Inverter(1 / 1.2, 0.96);
    static final Horizon HORIZON = new Horizon(List.of(
            new Horizon.Reading(0, 5),
            new Horizon.Reading(45, 8),
            new Horizon.Reading(90, 15),
            new Horizon.Reading(120, 20),
            new Horizon.Reading(150, 10),
            new Horizon.Reading(180, 5),
            new Horizon.Reading(210, 5),
            new Horizon.Reading(240, 12),
            new Horizon.Reading(270, 18),
            new Horizon.Reading(300, 10),
            new Horizon.Reading(360, 5)));

    private static final Map<ReferenceWeather, SiteYear> SITES = new EnumMap<>(ReferenceWeather.class);

    private ReferenceChain() {}

    /** Read once for all rows; the test is skipped where the public files are absent. */
    static synchronized SiteYear site(String name) {
        return SITES.computeIfAbsent(ReferenceWeather.of(name), file -> {
            WeatherYear year = file.year();
            return SiteYear.of(year, SunTrack.over(year.place()));
        });
    }

    static ArraySection section(double tilt, double azimuth) {
        return ArraySection.open("1 kW", 1, new Plane(tilt, azimuth));
    }

    static EnergyYield yield(SiteYear site, ArraySection section) {
        return EnergyYield.of(site, List.of(new InverterGroup("one", INVERTER, List.of(section))), LOSSES);
    }
}
