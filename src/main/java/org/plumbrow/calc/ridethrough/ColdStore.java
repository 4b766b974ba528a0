package org.plumbrow.calc.ridethrough;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import org.plumbrow.calc.Range;

/**
 * A cold store or freezer with its doors shut. Below freezing give the frozen product's heat capacity (about
 * 1,900 J/(kg K)); the heat of thawing is left out, which errs to the short side.
 *
 * @param productKg 0 to 10,000,000
 * @param productJPerKgK 500 to 4,200; 3,600 for fruit and vegetables
 * @param airM3 air that warms with the product, 0 to 100,000
 * @param surfaceM2 envelope, 1 to 100,000
 * @param uWPerM2K 0.05 to 10
 * @param respirationWPerT heat that living product makes, W per tonne, 0 to 500
 */
public record ColdStore(
        double productKg,
        double productJPerKgK,
        double airM3,
        double surfaceM2,
        double uWPerM2K,
        double respirationWPerT) {

    public static final Range PRODUCT = new Range(0, 1e7, "kg");
    public static final Range HEAT_CAPACITY = new Range(500, 4200, "J/(kg K)");
    public static final Range AIR = new Range(0, 100_000, "m3");
    public static final Range SURFACE = new Range(1, 100_000, "m2");
    public static final Range U_VALUE = new Range(0.05, 10, "W/(m2 K)");
    public static final Range RESPIRATION = new Range(0, 500, "W/t");

    private static final double AIR_J_PER_M3_K = 1.2 * 1006;
    private static final double HORIZON_MINUTES = 7 * 1440.0;

    public ColdStore {
        PRODUCT.check("product", productKg);
        HEAT_CAPACITY.check("heat capacity of the product", productJPerKgK);
        AIR.check("air", airM3);
        SURFACE.check("surface", surfaceM2);
        U_VALUE.check("U-value", uWPerM2K);
        RESPIRATION.check("respiration", respirationWPerT);
        if (productKg == 0 && airM3 == 0) {
            throw new IllegalArgumentException("a store without product and without air");
        }
    }

    /** Product and air as one. */
    public StoreBalance balance(double outsideC) {
        return new StoreBalance(
                productKg * productJPerKgK + airM3 * AIR_J_PER_M3_K,
                surfaceM2 * uWPerM2K,
                respirationWPerT * productKg / 1000,
                outsideC);
    }

    /** How fast the air would warm before the product takes part, K a minute: why the doors stay shut. */
    public double airAloneKPerMinute(double insideC, double outsideC) {
        return balance(outsideC).gainW(insideC) * 60 / (airM3 * AIR_J_PER_M3_K);
    }

    /** Minutes to a product limit: the short end as if the heat of the start went in all the time. */
    public RideThrough rideThrough(double insideC, double outsideC, Limit limit) {
        StoreBalance balance = balance(outsideC);
        LimitTime time = limit.isPassedBy(insideC)
                ? LimitTime.exactly(limit, OptionalDouble.of(0))
                : new LimitTime(
                        limit,
                        within(balance.minutesAtFirstRate(insideC, limit.value())),
                        within(balance.minutesTo(insideC, limit.value())),
                        within(balance.minutesTo(insideC, limit.value())));
        return new RideThrough(
                "cold store", HORIZON_MINUTES, List.of(time), EnumSet.of(Caution.PLANNING_AID, Caution.DOORS));
    }

    private static OptionalDouble within(OptionalDouble minutes) {
        return minutes.isPresent() && minutes.getAsDouble() > HORIZON_MINUTES ? OptionalDouble.empty() : minutes;
    }
}
