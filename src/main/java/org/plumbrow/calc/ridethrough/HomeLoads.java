package org.plumbrow.calc.ridethrough;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What a home cannot do without. Times of closed refrigerators and freezers: public food-safety guidance. Where somebody
 * depends on electrical medical equipment there is no figure at all: people talk with each other.
 */
public record HomeLoads(boolean medicalEquipment, boolean refrigerator, Freezer freezer) {

    public static final Limit FOOD = new Limit(
            Limit.Kind.PRODUCT, 4.4, "public food-safety guidance: discard what was above 40 degF for more than 2 h");
    public static final int REFRIGERATOR_MINUTES = 240;

    private static final Limit THAWED =
            new Limit(Limit.Kind.PRODUCT, 4.4, "public food-safety guidance: full freezer 48 h, half full 24 h");
    private static final double HORIZON_MINUTES = 2880;

    /** How full a freezer is decides how long it stays cold. */
    public enum Freezer {
        NONE(0),
        HALF_FULL(1440),
        FULL(2880);

        private final int minutes;

        Freezer(int minutes) {
            this.minutes = minutes;
        }
    }

    public RideThrough rideThrough() {
        Set<Caution> cautions = EnumSet.of(Caution.PLANNING_AID, Caution.DOORS);
        List<LimitTime> times = new ArrayList<>();
        if (medicalEquipment) {
            cautions.add(Caution.MEDICAL);
            return new RideThrough("home", HORIZON_MINUTES, times, cautions);
        }
        if (refrigerator) {
            times.add(LimitTime.exactly(FOOD, OptionalDouble.of(REFRIGERATOR_MINUTES)));
        }
        if (freezer != Freezer.NONE) {
            times.add(LimitTime.exactly(THAWED, OptionalDouble.of(freezer.minutes)));
        }
        return new RideThrough("home", HORIZON_MINUTES, times, cautions);
    }
}
