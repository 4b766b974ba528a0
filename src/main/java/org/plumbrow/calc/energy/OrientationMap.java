package org.plumbrow.calc.energy;

import java.util.ArrayList;
import java.util.List;

/**
 * Yield of one array over many tilts and azimuths, for the best way to face and what another one costs.
 *
 * @param tiltsDeg ascending
 * @param azimuthsDeg ascending
 * @param kwhPerKw {@code double[tilts][azimuths]}, specific yield of the year
 */
public record OrientationMap(double[] tiltsDeg, double[] azimuthsDeg, double[][] kwhPerKw) {

    /** One point of the map. */
    public record Best(Plane plane, double kwhPerKw) {}

    /**
     * @param section what is turned; its own plane does not count
     * @param acKw rating of the inverter behind it, kW
     * @param losses of the array
     */
    public static OrientationMap of(
            SiteYear site, ArraySection section, Inverter inverter, Losses losses, double[] tilts, double[] azimuths) {
        double[][] map = new double[tilts.length][azimuths.length];
        for (int tilt = 0; tilt < tilts.length; tilt++) {
            for (int azimuth = 0; azimuth < azimuths.length; azimuth++) {
                ArraySection turned = section.facing(new Plane(tilts[tilt], azimuths[azimuth]));
                map[tilt][azimuth] = kwhPerKw(site, turned, inverter, losses);
            }
        }
        return new OrientationMap(tilts.clone(), azimuths.clone(), map);
    }

    private static double kwhPerKw(SiteYear site, ArraySection section, Inverter inverter, Losses losses) {
        double sum = 0;
        for (double dc : new SectionChain(site, section, losses).dcKwPerKw()) {
            sum += Math.min(inverter.acKw(), inverter.unclippedKw(dc * section.kwDc()));
        }
        return sum / section.kwDc();
    }

    /** Evenly spaced, first and last included. */
    public static double[] steps(double from, double to, int count) {
        double[] steps = new double[count];
        for (int at = 0; at < count; at++) {
            steps[at] = from + (to - from) * at / (count - 1);
        }
        return steps;
    }

    /** The point with the highest yield; of equals the flatter. */
    public Best best() {
        Best best = new Best(new Plane(tiltsDeg[0], azimuthsDeg[0]), -1);
        for (Best each : points()) {
            best = each.kwhPerKw > best.kwhPerKw ? each : best;
        }
        return best;
    }

    /** Share of the best that this point gives, 0 to 1. */
    public double shareOfBest(int tilt, int azimuth) {
        return kwhPerKw[tilt][azimuth] / best().kwhPerKw;
    }

    private List<Best> points() {
        List<Best> points = new ArrayList<>();
        for (int tilt = 0; tilt < tiltsDeg.length; tilt++) {
            for (int azimuth = 0; azimuth < azimuthsDeg.length; azimuth++) {
                points.add(new Best(new Plane(tiltsDeg[tilt], azimuthsDeg[azimuth]), kwhPerKw[tilt][azimuth]));
            }
        }
        return points;
    }
}
