package org.plumbrow.calc.ridethrough;

import static org.plumbrow.calc.ridethrough.LimitTime.orEndless;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * How long one load stands without power: every limit with its minutes, and what must be said beside them. It knows
 * minutes and inputs; whether that is enough is decided by people.
 *
 * @param load what it is about, as people call it
 * @param horizonMinutes how far was looked; a time that is empty lies behind it
 * @param times of every limit; empty where no figure is given (see {@link Caution#MEDICAL})
 * @param cautions shown beside every figure, {@link Caution#PLANNING_AID} always among them
 */
public record RideThrough(String load, double horizonMinutes, List<LimitTime> times, Set<Caution> cautions) {

    /** What is planned with is half of the short end: a motor that will not start, a door that opens, a wrong guess. */
    public static final double PLANNED_SHARE = 0.5;

    public RideThrough {
        times = List.copyOf(times);
        cautions = Set.copyOf(cautions);
        if (!cautions.contains(Caution.PLANNING_AID)) {
            throw new IllegalArgumentException("ride-through of " + load + " carries no caution");
        }
    }

    /** Is there any figure? Without one nobody may conclude anything: people have to talk. */
    public boolean hasFigure() {
        return !times.isEmpty();
    }

    /** The limit whose short end comes first; empty when none is reached within the horizon. */
    public Optional<LimitTime> binding() {
        return times.stream()
                .filter(time -> time.shortEnd().isPresent())
                .min(Comparator.comparingDouble(time -> orEndless(time.shortEnd())));
    }

    /** Minutes until the first limit with every doubt against us: the alarm goes by this one. */
    public OptionalDouble shortEnd() {
        return first(LimitTime::shortEnd);
    }

    public OptionalDouble likely() {
        return first(LimitTime::likely);
    }

    public OptionalDouble longEnd() {
        return first(LimitTime::longEnd);
    }

    /** Half of the short end, minutes: "halved for planning". */
    public OptionalDouble planned() {
        OptionalDouble shortEnd = shortEnd();
        return shortEnd.isPresent() ? OptionalDouble.of(PLANNED_SHARE * shortEnd.getAsDouble()) : shortEnd;
    }

    private OptionalDouble first(Function<LimitTime, OptionalDouble> end) {
        return times.stream()
                .map(end)
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .min();
    }
}
