package org.plumbrow.calc.ridethrough.house;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.Range;

/**
 * How far the inputs of a house may be off, either way. The range of an answer comes from every combination of their ends;
 * where outdoors lies between start and limit a time is not monotone in the envelope, and the true ends may lie a little
 * further out. Source of {@link #USUAL}: common practice, no publication.
 *
 * @param heatShare of the animals' heat (mass, number, feed), 0 to 0.5
 * @param envelopeShare of the heat loss through the envelope, 0 to 0.9
 * @param airChangeShare of the natural air change, 0 to 0.9
 * @param outdoorK of the outdoor temperature, K, 0 to 10
 * @param startK of the temperature in the house at the start, K, 0 to 5
 */
public record HouseDoubts(
        double heatShare, double envelopeShare, double airChangeShare, double outdoorK, double startK) {

    private static final Range HEAT = new Range(0, 0.5, "share");
    private static final Range SHARE = new Range(0, 0.9, "share");
    private static final Range OUTDOOR = new Range(0, 10, "K");
    private static final Range START = new Range(0, 5, "K");

    // Below the ranges, as they are checked against them.
    public static final HouseDoubts NONE = new HouseDoubts(0, 0, 0, 0, 0);
    public static final HouseDoubts USUAL = new HouseDoubts(0.10, 0.20, 0.30, 2, 1);

    public HouseDoubts {
        HEAT.check("doubt about heat", heatShare);
        SHARE.check("doubt about the envelope", envelopeShare);
        SHARE.check("doubt about air changes", airChangeShare);
        OUTDOOR.check("doubt about outdoors", outdoorK);
        START.check("doubt about the start", startK);
    }

    /** One combination: factors on heat, envelope and air change, kelvins on outdoors and start. */
    record Corner(double heat, double envelope, double airChanges, double outdoorK, double startK) {
        static final Corner MIDDLE = new Corner(1, 1, 1, 0, 0);
    }

    /** Every combination of ends; one alone where nothing is in doubt. */
    List<Corner> corners() {
        List<Corner> corners = new ArrayList<>();
        for (double heat : ends(1, heatShare)) {
            for (double envelope : ends(1, envelopeShare)) {
                for (double airChanges : ends(1, airChangeShare)) {
                    for (double outdoor : ends(0, outdoorK)) {
                        for (double start : ends(0, startK)) {
                            corners.add(new Corner(heat, envelope, airChanges, outdoor, start));
                        }
                    }
                }
            }
        }
        return corners;
    }

    private static double[] ends(double middle, double off) {
        return off == 0 ? new double[] {middle} : new double[] {middle - off, middle + off};
    }
}
