package org.plumbrow.calc.ridethrough;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import org.plumbrow.calc.Range;

/**
 * Milk in a bulk tank without cooling.
 *
 * @param milkKg 0 to 100,000
 * @param milkC 0 to 40
 * @param uaWPerK heat through the tank's insulation, see {@link #uaOf}, 0 to 1,000
 */
public record MilkTank(double milkKg, double milkC, double uaWPerK) {

    public static final double MILK_J_PER_KG_K = 3900;
    /** 50 degF, the blend of later milkings and within 4 h of the start of the first. */
    public static final Limit BLEND = new Limit(
            Limit.Kind.PRODUCT,
            10,
            "California Food and Agricultural Code 35783, agrees with the federal ordinance: 50 degF");
    /** 45 degF within 2 h after milking ends, and from then on. */
    public static final Limit STORED = new Limit(
            Limit.Kind.PRODUCT,
            7,
            "California Food and Agricultural Code 35783, agrees with the federal ordinance: 45 degF");
    /** 40 degF: no outage begins with warmer milk. */
    public static final Limit BEFORE_OUTAGE = new Limit(
            Limit.Kind.PRODUCT,
            4.4,
            "40 degF: the stricter states' rule (Massachusetts 330 CMR 27), common practice before an outage");

    public static final Range MASS = new Range(0, 100_000, "kg");
    public static final Range MILK = new Range(0, 40, "degC");
    public static final Range UA = new Range(0, 1000, "W/K");

    private static final double HORIZON_MINUTES = 2880;

    public MilkTank {
        MASS.check("milk", milkKg);
        MILK.check("temperature of the milk", milkC);
        UA.check("heat loss of the tank", uaWPerK);
    }

    /**
     * Heat through a tank's insulation from how it warms, W/K: 1 K in 24 h at 26 K of difference is what an encyclopedia
     * of bulk tanks gives for a full one.
     */
    public static double uaOf(double milkKg, double warmsByK, double inHours, double differenceK) {
        return milkKg * MILK_J_PER_KG_K * warmsByK / (inHours * 3600) / differenceK;
    }

    private StoreBalance balance(double ambientC) {
        return new StoreBalance(Math.max(1, milkKg * MILK_J_PER_KG_K), uaWPerK, 0, ambientC);
    }

    /** Kelvins that the milk gains in so many minutes. */
    public double warmsByK(double ambientC, double minutes) {
        return balance(ambientC).temperatureC(milkC, minutes) - milkC;
    }

    /** How long the stored milk stays below {@link #STORED}, no milk coming in. */
    public RideThrough rideThrough(double ambientC) {
        OptionalDouble minutes = milkC >= STORED.value()
                ? OptionalDouble.of(0)
                : balance(ambientC).minutesTo(milkC, STORED.value());
        OptionalDouble within =
                minutes.isPresent() && minutes.getAsDouble() > HORIZON_MINUTES ? OptionalDouble.empty() : minutes;
        return new RideThrough(
                "milk tank",
                HORIZON_MINUTES,
                List.of(LimitTime.exactly(STORED, within)),
                EnumSet.of(Caution.PLANNING_AID, Caution.MILK));
    }

    /** Temperature once warm milk has come in, degC. */
    public double blendC(double arrivingKg, double arrivingC) {
        return (milkKg * milkC + arrivingKg * arrivingC) / (milkKg + arrivingKg);
    }

    /** How much milk may come in until the blend is at the limit, kg; empty when any amount may. */
    public OptionalDouble mostArrivingKg(double arrivingC, Limit limit) {
        return arrivingC <= limit.value()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Math.max(0, milkKg * (limit.value() - milkC) / (arrivingC - limit.value())));
    }
}
