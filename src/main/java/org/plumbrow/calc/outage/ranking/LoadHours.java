package org.plumbrow.calc.outage.ranking;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.plumbrow.calc.ridethrough.RideThrough;
import org.plumbrow.calc.ridethrough.house.HouseQuestion;
import org.plumbrow.calc.ridethrough.house.Outdoors;

/**
 * How long one load stands without power, begun in each hour.
 *
 * @param first a full hour
 * @param hours one after the other
 */
public record LoadHours(String load, LocalDateTime first, List<Stands> hours) {

    public LoadHours {
        hours = List.copyOf(hours);
        if (first.getMinute() != 0) {
            throw new IllegalArgumentException("hours of " + load + " begin at " + first + ", not at a full hour");
        }
    }

    /** Minutes with every doubt against us, as likely, with every doubt for us; infinite where no limit is reached. */
    public record Stands(double shortEnd, double likely, double longEnd) {
        public static final Stands ENDLESS =
                new Stands(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

        public Stands {
            if (!(shortEnd >= 0 && shortEnd <= likely && likely <= longEnd)) {
                throw new IllegalArgumentException(
                        "minutes %s, %s, %s are not in order".formatted(shortEnd, likely, longEnd));
            }
        }

        /** @throws IllegalArgumentException where no figure may be given: people have to talk */
        public static Stands of(RideThrough answer) {
            if (!answer.hasFigure()) {
                throw new IllegalArgumentException("there is no figure for " + answer.load());
            }
            return new Stands(
                    answer.shortEnd().orElse(Double.POSITIVE_INFINITY),
                    answer.likely().orElse(Double.POSITIVE_INFINITY),
                    answer.longEnd().orElse(Double.POSITIVE_INFINITY));
        }

        Stands and(Stands other) {
            return new Stands(
                    Math.min(shortEnd, other.shortEnd),
                    Math.min(likely, other.likely),
                    Math.min(longEnd, other.longEnd));
        }
    }

    /** A load that does not ask for the weather: a tank in a cool room, a home. */
    public static LoadHours always(RideThrough answer, LocalDateTime first, int hours) {
        return new LoadHours(answer.load(), first, java.util.Collections.nCopies(hours, Stands.of(answer)));
    }

    /**
     * A house hour by hour in that weather, at the warm and at the cold end of it; the shorter counts.
     *
     * @param question everything but the weather; its outdoors give the sun in the house
     */
    public static LoadHours ofHouse(HouseQuestion question, WeatherHours weather) {
        List<Stands> hours = new ArrayList<>(weather.hours().size());
        for (WeatherHour hour : weather.hours()) {
            Function<Double, Stands> at = airC -> Stands.of(new HouseQuestion(
                            question.house(),
                            new Outdoors(
                                    airC,
                                    hour.relativeHumidityPercent(),
                                    question.outdoors().sunW()),
                            question.start(),
                            question.limits(),
                            question.doubts(),
                            question.guessed(),
                            question.horizonMinutes())
                    .asGiven());
            Stands warm = at.apply(hour.warmC());
            hours.add(hour.warmC() == hour.coldC() ? warm : warm.and(at.apply(hour.coldC())));
        }
        return new LoadHours(question.house().name(), weather.first(), hours);
    }
}
