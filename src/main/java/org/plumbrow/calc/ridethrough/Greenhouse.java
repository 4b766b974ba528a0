package org.plumbrow.calc.ridethrough;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import org.plumbrow.calc.Range;

/**
 * A closed greenhouse without heating or fans.
 *
 * @param coverM2 glass or film to the outside, 1 to 100,000
 * @param uWPerM2K single film 6.5 to 6.8, double film 4.0, single glass 6.4 to 6.9 (several greenhouse guides)
 * @param volumeM3 1 to 1,000,000
 * @param airChangesPerHour 0 to 60; about 1 closed
 * @param waterKg water, wet soil and crop that give and take heat, as water, 0 to 10,000,000
 * @param floorM2 1 to 100,000
 * @param sunTaken share of the sun on the floor that warms the house, 0 to 1; 0.5 is usual
 */
public record Greenhouse(
        double coverM2,
        double uWPerM2K,
        double volumeM3,
        double airChangesPerHour,
        double waterKg,
        double floorM2,
        double sunTaken) {

    /** W/(m2 K) of one Btu/(h ft2 degF). */
    public static final double BTU_PER_FT2_F = 5.6783;

    public static final Range AREA = new Range(1, 100_000, "m2");
    public static final Range U_VALUE = new Range(0.5, 10, "W/(m2 K)");
    public static final Range VOLUME = new Range(1, 1e6, "m3");
    public static final Range AIR_CHANGES = new Range(0, 60, "per hour");
    public static final Range WATER = new Range(0, 1e7, "kg");
    public static final Range TAKEN = new Range(0, 1, "share");
    public static final Range SUN = new Range(0, 1500, "W/m2");

    private static final double AIR_J_PER_M3_K = 1.2 * 1006;
    private static final double WATER_J_PER_KG_K = 4186;
    private static final double HORIZON_MINUTES = 1440;

    public Greenhouse {
        AREA.check("cover", coverM2);
        U_VALUE.check("U-value", uWPerM2K);
        VOLUME.check("volume", volumeM3);
        AIR_CHANGES.check("air changes", airChangesPerHour);
        WATER.check("water", waterKg);
        AREA.check("floor", floorM2);
        TAKEN.check("share of the sun", sunTaken);
    }

    public Greenhouse airAlone() {
        return new Greenhouse(coverM2, uWPerM2K, volumeM3, airChangesPerHour, 0, floorM2, sunTaken);
    }

    /** @param sunWPerM2 on the floor outside, 0 to 1,500 */
    public StoreBalance balance(double outsideC, double sunWPerM2) {
        SUN.check("sun", sunWPerM2);
        return new StoreBalance(
                volumeM3 * AIR_J_PER_M3_K + waterKg * WATER_J_PER_KG_K,
                coverM2 * uWPerM2K + AIR_J_PER_M3_K * airChangesPerHour * volumeM3 / 3600,
                sunWPerM2 * sunTaken * floorM2,
                outsideC);
    }

    /** Minutes to heat or frost: the short end with the air alone, the likely and long one with what stands in it. */
    public RideThrough rideThrough(double insideC, double outsideC, double sunWPerM2, List<Limit> limits) {
        StoreBalance full = balance(outsideC, sunWPerM2);
        StoreBalance light = airAlone().balance(outsideC, sunWPerM2);
        List<LimitTime> times = limits.stream()
                .map(limit -> limit.isPassedBy(insideC)
                        ? LimitTime.exactly(limit, OptionalDouble.of(0))
                        : new LimitTime(
                                limit,
                                within(light.minutesTo(insideC, limit.value())),
                                within(full.minutesTo(insideC, limit.value())),
                                within(full.minutesTo(insideC, limit.value()))))
                .toList();
        return new RideThrough(
                "greenhouse", HORIZON_MINUTES, times, EnumSet.of(Caution.PLANNING_AID, Caution.AIR_MASS));
    }

    private static OptionalDouble within(OptionalDouble minutes) {
        return minutes.isPresent() && minutes.getAsDouble() > HORIZON_MINUTES ? OptionalDouble.empty() : minutes;
    }
}
