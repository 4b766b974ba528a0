package org.plumbrow.calc.ridethrough;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.ridethrough.Generator.Rotation;
import org.plumbrow.calc.ridethrough.Generator.Transfer;

/**
 * Does a generator carry what must run? Running load at most 0.8 of what it gives at this height and heat; loads started
 * one after the other, the hardest start last, each start with what runs already within what it gives; fuel for three
 * times the planned outage; run under the farm's real load within seven days; listed transfer switch; phases as the
 * utility's. Source: common practice, National Electrical Code 702.5 for the transfer switch.
 *
 * @param checks every one with value and limit
 * @param runningKw of all loads together
 * @param startingPeakKva the worst moment while they are started
 * @param fuelMinutes how long the tank lasts with all loads running
 */
public record GeneratorCover(
        List<Check> checks, double runningKw, double startingPeakKva, double fuelMinutes, Set<Caution> cautions) {

    public static final double LOADED_SHARE = 0.8;
    public static final double FUEL_TIMES_OUTAGE = 3;
    public static final int RUN_WITHIN_DAYS = 7;

    public GeneratorCover {
        checks = List.copyOf(checks);
        cautions = Set.copyOf(cautions);
    }

    /** What is asked of a generator. */
    public enum Asked {
        TRANSFER_SWITCH("listed transfer switch", ""),
        RUNNING_LOAD("running load", "kW"),
        STARTING_LOAD("hardest start with the rest running", "kVA"),
        FUEL("fuel for three times the outage", "min"),
        RUN_UNDER_LOAD("days since it ran under the farm's load", "days"),
        ROTATION("phases turn as the utility's", "");

        private final String words;
        private final String unit;

        Asked(String words, String unit) {
            this.words = words;
            this.unit = unit;
        }

        public String words() {
            return words;
        }

        public String unit() {
            return unit;
        }
    }

    /** @param value NaN where nobody knows it; then it is not met */
    public record Check(Asked asked, double value, double limit, boolean met) {}

    /**
     * Something that must run.
     *
     * @param runningKw 0 to 5,000
     * @param startFactor starting kVA over running kW, 1 to 8; 3 to 6 for motors started across the line (common practice)
     */
    public record FarmLoad(String name, double runningKw, double startFactor) {
        public static final Range RUNNING = new Range(0, 5000, "kW");
        public static final Range START = new Range(1, 8, "times running");

        public FarmLoad {
            RUNNING.check("load of " + name, runningKw);
            START.check("start of " + name, startFactor);
        }

        double startKva() {
            return runningKw * startFactor;
        }
    }

    public static GeneratorCover of(Generator generator, List<FarmLoad> loads, double outageMinutes) {
        double running = loads.stream().mapToDouble(FarmLoad::runningKw).sum();
        double peak = startingPeakKva(loads);
        double usable = generator.usableKw();
        double fuelMinutes =
                running == 0 ? Double.POSITIVE_INFINITY : 60 * generator.fuelGal() / (running * generator.galPerKwh());
        List<Check> checks = new ArrayList<>();
        checks.add(yes(Asked.TRANSFER_SWITCH, generator.transfer() != Transfer.NONE));
        checks.add(atMost(Asked.RUNNING_LOAD, running, LOADED_SHARE * usable));
        checks.add(atMost(Asked.STARTING_LOAD, peak, usable));
        double fuelNeeded = FUEL_TIMES_OUTAGE * outageMinutes;
        checks.add(new Check(Asked.FUEL, fuelMinutes, fuelNeeded, fuelMinutes >= fuelNeeded));
        double days =
                generator.daysSinceRun().isPresent() ? generator.daysSinceRun().getAsInt() : Double.NaN;
        checks.add(new Check(Asked.RUN_UNDER_LOAD, days, RUN_WITHIN_DAYS, days >= 0 && days <= RUN_WITHIN_DAYS));
        Rotation rotation = generator.rotation();
        checks.add(yes(Asked.ROTATION, rotation == Rotation.SAME || rotation == Rotation.SINGLE_PHASE));
        return new GeneratorCover(
                checks,
                running,
                peak,
                fuelMinutes,
                EnumSet.of(Caution.PLANNING_AID, Caution.GENERATOR, Caution.GENERATOR_MAY_FAIL, Caution.RESTART));
    }

    /** The hardest start last: the most of (what runs already + this start), kVA. */
    private static double startingPeakKva(List<FarmLoad> loads) {
        double running = 0;
        double peak = 0;
        for (FarmLoad load : loads.stream()
                .sorted(Comparator.comparingDouble(FarmLoad::startKva))
                .toList()) {
            peak = Math.max(peak, running + load.startKva());
            running += load.runningKw();
        }
        return peak;
    }

    private static Check atMost(Asked asked, double value, double limit) {
        return new Check(asked, value, limit, value <= limit);
    }

    private static Check yes(Asked asked, boolean met) {
        return new Check(asked, met ? 1 : 0, 1, met);
    }

    /** Everything that is asked of it is met; it may still fail, see {@link #ifItStops}. */
    public boolean isProven() {
        return checks.stream().allMatch(Check::met);
    }

    /**
     * What happens if it stops in the middle.
     *
     * @param minute of the outage at which it stops
     * @param stillOffMinutes until the power is planned to be back
     * @param shortByMinutes by how much the planned ride-through from then on falls short; 0 when it does not
     */
    public record Stopped(double minute, double stillOffMinutes, double shortByMinutes) {}

    /** @param plannedRideThrough minutes, already halved; infinite where no limit is reached */
    public static Stopped ifItStops(double minute, double outageMinutes, double plannedRideThrough) {
        double still = Math.max(0, outageMinutes - minute);
        return new Stopped(minute, still, Math.max(0, still - plannedRideThrough));
    }
}
