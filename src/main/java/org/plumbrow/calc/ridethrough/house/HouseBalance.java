package org.plumbrow.calc.ridethrough.house;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.ridethrough.Limit;

/**
 * The air of a house without fans, as one node: C dT/dt = u f(T) hpu + sun - G (T - To), with C = k 1.2 1006 V (J/K),
 * G = UA + 1.2 1006 ach V / 3600 (W/K), f the sensible heat of {@link Species}, u the uplift of today's animals. Water:
 * 1.2 V dW/dt = u (total - sensible) hpu / (680 3600) - 1.2 V ach / 3600 (W - Wo), kg/s, 680 Wh/kg; what passes
 * saturation runs down the walls. Carbon dioxide: dc/dt = 0.185 hpu / V per hour, without air exchange (the safe side),
 * from the hpu without uplift; while curtains are open it is no limit and stays as it is.
 * <p>Source: balances and constants of CIGR 2002, from memory; two statements about heavy pigs and a trial with young ones
 * calibrate k. Steps are classical Runge-Kutta of fourth order, the last one halved until the limit is met.
 */
public final class HouseBalance {

    /** Heat capacity of air, J/(m3 K): 1.2 kg/m3, 1,006 J/(kg K). */
    public static final double AIR_J_PER_M3_K = 1.2 * 1006;
    /** From animals and manure, m3 an hour per hpu (CIGR 2002, from memory); 0.163 is that of the animals alone. */
    public static final double CO2_M3_PER_HPU_HOUR = 0.185;

    public static final double CO2_ANIMALS_ONLY = 0.163;
    /** Seconds of one step: with 60 s a time to a limit is right to 0.01 %. */
    public static final double STEP_S = 20;

    public static final Range STEP = new Range(0.01, 3600, "s");

    private static final double AIR_KG_PER_M3 = 1.2;
    private static final double VAPOUR_WH_PER_KG = 680;
    private static final double S_PER_H = 3600;
    private static final int HALVINGS = 50;

    private final LivestockHouse house;
    private final Outdoors outdoors;
    private final Species species;
    private final double heatHpu;
    private final double co2Hpu;
    private final double lossWPerK;
    private final double capacityJPerK;
    private final double changesPerS;
    private final double outdoorRatio;

    private HouseBalance(LivestockHouse house, Outdoors outdoors, HouseDoubts.Corner corner) {
        this.house = house;
        this.outdoors = outdoors.warmerBy(corner.outdoorK());
        species = house.animal().species();
        co2Hpu = house.hpu() * corner.heat();
        heatHpu = co2Hpu * house.uplift();
        changesPerS = house.airChangesPerHour() * corner.airChanges() / S_PER_H;
        lossWPerK = house.uaWPerK() * corner.envelope() + AIR_J_PER_M3_K * changesPerS * house.volumeM3();
        capacityJPerK = house.massFactor() * AIR_J_PER_M3_K * house.volumeM3();
        outdoorRatio = MoistAir.humidityRatio(this.outdoors.airC(), outdoors.relativeHumidityPercent());
    }

    public static HouseBalance of(LivestockHouse house, Outdoors outdoors) {
        return new HouseBalance(house, outdoors, HouseDoubts.Corner.MIDDLE);
    }

    static HouseBalance at(HouseDoubts.Corner corner, LivestockHouse house, Outdoors outdoors) {
        return new HouseBalance(house, outdoors, corner);
    }

    /** How fast the air warms at that temperature, K/s; negative when it cools. */
    public double riseKPerS(double airC) {
        double heat = heatHpu * species.sensibleW(airC) + outdoors.sunW();
        return (heat - lossWPerK * (airC - outdoors.airC())) / capacityJPerK;
    }

    /** Heat that leaves per kelvin over outdoors, W/K. */
    public double lossWPerK() {
        return lossWPerK;
    }

    /** How fast carbon dioxide rises in the closed house, % an hour. */
    public double co2PercentPerHour(double m3PerHpuHour) {
        return 100 * m3PerHpuHour * co2Hpu / house.volumeM3();
    }

    /** The temperature at which the house would stay, degC, from -60 to 100; empty where there is none. */
    public OptionalDouble settlesAtC() {
        double low = -60;
        double high = 100;
        if (riseKPerS(low) < 0 || riseKPerS(high) > 0) {
            return OptionalDouble.empty();
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (riseKPerS(middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of((low + high) / 2);
    }

    /** The air after one step. */
    HouseAir after(HouseAir air, double seconds) {
        double half = seconds / 2;
        double t1 = riseKPerS(air.airC());
        double w1 = moisturePerS(air.airC(), air.humidityRatio());
        double t2 = riseKPerS(air.airC() + half * t1);
        double w2 = moisturePerS(air.airC() + half * t1, air.humidityRatio() + half * w1);
        double t3 = riseKPerS(air.airC() + half * t2);
        double w3 = moisturePerS(air.airC() + half * t2, air.humidityRatio() + half * w2);
        double t4 = riseKPerS(air.airC() + seconds * t3);
        double w4 = moisturePerS(air.airC() + seconds * t3, air.humidityRatio() + seconds * w3);
        double airC = air.airC() + seconds / 6 * (t1 + 2 * t2 + 2 * t3 + t4);
        double ratio = air.humidityRatio() + seconds / 6 * (w1 + 2 * w2 + 2 * w3 + w4);
        double co2 = house.curtainsOpen() ? 0 : co2PercentPerHour(CO2_M3_PER_HPU_HOUR) * seconds / S_PER_H;
        return new HouseAir(
                airC, Math.min(ratio, MoistAir.humidityRatio(airC, 100)), Math.min(100, air.co2Percent() + co2));
    }

    private double moisturePerS(double airC, double humidityRatio) {
        double kgPerS = heatHpu * species.latentW(airC) / VAPOUR_WH_PER_KG / S_PER_H;
        return kgPerS / (AIR_KG_PER_M3 * house.volumeM3()) - changesPerS * (humidityRatio - outdoorRatio);
    }

    /** The air minute by minute, the start included: what a chart shows. */
    public List<HouseAir> curve(HouseAir start, int minutes) {
        List<HouseAir> curve = new ArrayList<>(minutes + 1);
        HouseAir air = start;
        curve.add(air);
        int steps = (int) (60 / STEP_S);
        for (int minute = 0; minute < minutes; minute++) {
            for (int step = 0; step < steps; step++) {
                air = after(air, STEP_S);
            }
            curve.add(air);
        }
        return curve;
    }

    /**
     * Minutes until the limit is met; 0 when it is passed at the start, empty when not within the horizon.
     *
     * @param stepS seconds of one step, {@link #STEP_S} unless it is studied
     */
    public OptionalDouble minutesTo(Limit limit, HouseAir start, double horizonMinutes, double stepS) {
        STEP.check("step", stepS);
        if (limit.isPassedBy(measured(limit.kind(), start))) {
            return OptionalDouble.of(0);
        }
        return switch (limit.kind()) {
            case CO2 -> minutesToCo2(limit.value(), start, horizonMinutes);
            case HEAT ->
                riseKPerS(limit.value()) <= 0 ? OptionalDouble.empty() : step(limit, start, horizonMinutes, stepS);
            case COLD, FROST ->
                riseKPerS(limit.value()) >= 0 ? OptionalDouble.empty() : step(limit, start, horizonMinutes, stepS);
            default -> step(limit, start, horizonMinutes, stepS);
        };
    }

    private OptionalDouble minutesToCo2(double percent, HouseAir start, double horizonMinutes) {
        double minutes = 60 * (percent - start.co2Percent()) / co2PercentPerHour(CO2_M3_PER_HPU_HOUR);
        return house.curtainsOpen() || minutes > horizonMinutes ? OptionalDouble.empty() : OptionalDouble.of(minutes);
    }

    private OptionalDouble step(Limit limit, HouseAir start, double horizonMinutes, double stepS) {
        HouseAir air = start;
        for (double s = 0; s < 60 * horizonMinutes; s += stepS) {
            HouseAir next = after(air, stepS);
            if (limit.isPassedBy(measured(limit.kind(), next))) {
                double minutes = (s + withinStep(limit, air, stepS)) / 60;
                return minutes > horizonMinutes ? OptionalDouble.empty() : OptionalDouble.of(minutes);
            }
            air = next;
        }
        return OptionalDouble.empty();
    }

    private double withinStep(Limit limit, HouseAir from, double stepS) {
        double before = 0;
        double passed = stepS;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (before + passed) / 2;
            if (limit.isPassedBy(measured(limit.kind(), after(from, middle)))) {
                passed = middle;
            } else {
                before = middle;
            }
        }
        return passed;
    }

    private static double measured(Limit.Kind kind, HouseAir air) {
        return switch (kind) {
            case HEAT, COLD, FROST, PRODUCT -> air.airC();
            case CO2 -> air.co2Percent();
            case THI -> air.thi();
        };
    }
}
