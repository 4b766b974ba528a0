package org.plumbrow.calc.ridethrough.house;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.ridethrough.Caution;
import org.plumbrow.calc.ridethrough.Limit;
import org.plumbrow.calc.ridethrough.LimitTime;
import org.plumbrow.calc.ridethrough.RideThrough;

/**
 * How long does a house with animals stand without power, begun in that hour?
 *
 * @param start the air at the moment the fans stop
 * @param guessed are some inputs guesses? The answer then says so
 * @param horizonMinutes how far to look, 10 to 2,880
 */
public record HouseQuestion(
        LivestockHouse house,
        Outdoors outdoors,
        HouseAir start,
        HouseLimits limits,
        HouseDoubts doubts,
        boolean guessed,
        double horizonMinutes) {

    public static final Range HORIZON = new Range(10, 2880, "min");
    public static final double USUAL_HORIZON_MINUTES = 1440;

    public HouseQuestion {
        HORIZON.check("minutes looked at", horizonMinutes);
    }

    /** With the usual limits, doubts and horizon. */
    public static HouseQuestion usual(LivestockHouse house, Outdoors outdoors, HouseAir start) {
        return new HouseQuestion(
                house,
                outdoors,
                start,
                HouseLimits.usual(house.animal().species()),
                HouseDoubts.USUAL,
                false,
                USUAL_HORIZON_MINUTES);
    }

    /**
     * @param asGiven with the house's own mass factor
     * @param airAlone with mass factor 1, always shown beside it
     * @param settlesAtC where the air would end, degC; empty where it would not
     */
    public record Answer(RideThrough asGiven, RideThrough airAlone, OptionalDouble settlesAtC) {}

    public Answer answer() {
        return new Answer(
                rideThrough(house),
                rideThrough(house.withMassFactor(1)),
                HouseBalance.of(house, outdoors).settlesAtC());
    }

    /** With the house's own mass factor alone: for whoever asks of many hours. */
    public RideThrough asGiven() {
        return rideThrough(house);
    }

    private RideThrough rideThrough(LivestockHouse which) {
        HouseBalance middle = HouseBalance.of(which, outdoors);
        List<HouseDoubts.Corner> corners = doubts.corners();
        List<HouseBalance> balances = corners.stream()
                .map(corner -> HouseBalance.at(corner, which, outdoors))
                .toList();
        List<LimitTime> times = new ArrayList<>();
        for (Limit limit : limits.limits()) {
            OptionalDouble likely = middle.minutesTo(limit, start, horizonMinutes, HouseBalance.STEP_S);
            double shortEnd = likely.orElse(Double.POSITIVE_INFINITY);
            double longEnd = shortEnd;
            for (int i = 0; i < corners.size(); i++) {
                double minutes = balances.get(i)
                        .minutesTo(limit, startAt(corners.get(i)), horizonMinutes, HouseBalance.STEP_S)
                        .orElse(Double.POSITIVE_INFINITY);
                shortEnd = Math.min(shortEnd, minutes);
                longEnd = Math.max(longEnd, minutes);
            }
            times.add(new LimitTime(limit, orNone(shortEnd), likely, orNone(longEnd)));
        }
        return new RideThrough(which.name(), horizonMinutes, times, cautions());
    }

    private HouseAir startAt(HouseDoubts.Corner corner) {
        return new HouseAir(start.airC() + corner.startK(), start.humidityRatio(), start.co2Percent());
    }

    private static OptionalDouble orNone(double minutes) {
        return Double.isInfinite(minutes) ? OptionalDouble.empty() : OptionalDouble.of(minutes);
    }

    private Set<Caution> cautions() {
        Set<Caution> cautions = EnumSet.of(Caution.PLANNING_AID, Caution.ANIMALS, Caution.AIR_MASS);
        if (house.curtainsOpen()) {
            cautions.add(Caution.CURTAINS);
        }
        if (guessed) {
            cautions.add(Caution.GUESSED);
        }
        return cautions;
    }
}
