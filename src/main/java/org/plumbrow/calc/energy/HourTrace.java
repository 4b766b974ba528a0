package org.plumbrow.calc.energy;

import org.plumbrow.calc.energy.sun.HourOfYear;
import org.plumbrow.calc.energy.sun.SunTrack;
import org.plumbrow.calc.energy.weather.WeatherYear;

/**
 * Every step of one hour of one section, so that a figure can be opened. It is worked out apart from the fast loop, and a
 * test holds the two together.
 *
 * @param light on the plane, as shade leaves it
 * @param openShare share of beam and circumsolar light that neither horizon nor rows take, 0 to 1
 * @param modifier of the beam by the glass
 * @param effectiveWPerM2 light that enters
 * @param cellC cell temperature
 * @param grossDcKwPerKw DC for each kW before losses
 * @param dcKwPerKw after losses
 */
public record HourTrace(
        PlaneLight light,
        double openShare,
        double modifier,
        double effectiveWPerM2,
        double cellC,
        double grossDcKwPerKw,
        double dcKwPerKw) {

    public static HourTrace of(SiteYear site, ArraySection section, Losses losses, int hour) {
        SunTrack sun = site.sun();
        WeatherYear weather = site.weather();
        double cosine = section.plane().cosineOfIncidence(sun.up(hour), sun.east(hour), sun.north(hour));
        double open = open(section, sun, hour, cosine);
        PlaneLight light = shaded(site.light(hour).on(section.plane(), cosine, site.groundWPerM2(hour)), open, section);
        double modifier = section.module().incidence().at(cosine);
        double effective = light.total() - light.beam() * (1 - modifier);
        double cell = section.heating().cellC(light.total(), weather.airC(hour), weather.windMPerS(hour));
        double gross = section.module().dcPerKw(effective, cell);
        double kept = losses.kept(HourOfYear.monthOf(hour));
        return new HourTrace(light, open, modifier, effective, cell, gross, gross * kept);
    }

    private static double open(ArraySection section, SunTrack sun, int hour, double cosine) {
        boolean hidden = section.horizon()
                .map(around -> 90 - sun.apparentZenithDeg(hour) < around.elevationDeg(sun.azimuthDeg(hour)))
                .orElse(false);
        double shaded = section.rows()
                .map(rows -> rows.shadedShare(sun.up(hour), cosine))
                .orElse(0.0);
        return hidden ? 0 : 1 - shaded;
    }

    private static PlaneLight shaded(PlaneLight light, double open, ArraySection section) {
        double kept = section.rows()
                .map(rows -> rows.isotropicKept(section.plane().tiltDeg()))
                .orElse(1.0);
        return new PlaneLight(
                light.incidenceDeg(),
                light.beam() * open,
                light.circumsolar() * open,
                light.isotropic() * kept,
                light.horizon(),
                light.ground());
    }
}
