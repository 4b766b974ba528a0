package org.plumbrow.calc.outage.ranking;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.plumbrow.calc.ridethrough.GeneratorCover;
import org.plumbrow.calc.ridethrough.GeneratorCover.Asked;

/** What is on the site stands twice the outage, or a generator that is proven and fuelled carries it. */
final class LoadRules {

    /** "Ride-through at least twice the outage" (good practice of the trade). */
    static final double TIMES_OUTAGE = 2;

    private LoadRules() {}

    /** The loads by themselves; with a generator they only say whether it is needed. */
    record Stand(LoadTable loads, int planned, boolean generator) implements Rule.Hourly {
        @Override
        public int reach() {
            return planned;
        }

        @Override
        public Factor judge(int start) {
            int end = start + planned;
            double limit = TIMES_OUTAGE * planned;
            if (!loads.isKnown(start, end)) {
                return Factor.open(FactorKind.RIDE_THROUGH, limit, "no weather for that hour");
            }
            Factor factor = Factor.atLeast(
                    FactorKind.RIDE_THROUGH, loads.worst(start, end).shortEnd(), limit, loads.binding(start, end));
            return factor.isBroken() && generator ? factor.as(Verdict.CAUTION) : factor;
        }

        /** Does the window need a generator? */
        boolean needsGenerator(int start) {
            return !loads.isEmpty() && judge(start).verdict() != Verdict.MET;
        }
    }

    /** One thing that is asked of the generator: it rules an hour out only where the loads need it. */
    private abstract static class OfGenerator implements Rule.Hourly {
        private final Stand stand;

        OfGenerator(Stand stand) {
            this.stand = stand;
        }

        abstract Factor asked(int start);

        @Override
        public int reach() {
            return stand.planned;
        }

        @Override
        public Factor judge(int start) {
            Factor factor = asked(start);
            return factor.isBroken() && !stand.needsGenerator(start) ? factor.as(Verdict.CAUTION) : factor;
        }
    }

    static List<Rule> ofGenerator(Stand stand, GeneratorDays generator, SiteClock clock) {
        List<String> unmet = generator.cover().checks().stream()
                .filter(check -> check.asked() != Asked.FUEL && check.asked() != Asked.RUN_UNDER_LOAD && !check.met())
                .map(check -> check.asked().words())
                .toList();
        Factor fit = Factor.atMost(
                FactorKind.GENERATOR_FIT, unmet.size(), 0, unmet.stream().collect(Collectors.joining(", ")));
        double minutes = generator.cover().fuelMinutes();
        Factor fuel = Factor.atLeast(
                FactorKind.GENERATOR_FUEL, minutes, GeneratorCover.FUEL_TIMES_OUTAGE * stand.planned, "");
        return List.of(
                new OfGenerator(stand) {
                    @Override
                    Factor asked(int start) {
                        return fit;
                    }
                },
                new OfGenerator(stand) {
                    @Override
                    Factor asked(int start) {
                        return fuel;
                    }
                },
                new OfGenerator(stand) {
                    @Override
                    Factor asked(int start) {
                        OptionalInt days = generator.daysSinceRun(clock.day(start));
                        double since = days.isPresent() ? days.getAsInt() : Double.POSITIVE_INFINITY;
                        return Factor.atMost(FactorKind.GENERATOR_RUN, since, GeneratorCover.RUN_WITHIN_DAYS, "");
                    }
                });
    }
}
