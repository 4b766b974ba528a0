package org.plumbrow.calc.outage.ranking;

import java.util.List;
import java.util.OptionalDouble;

/** The weather of one hour: forecast for it, or as such hours usually are. */
public sealed interface WeatherHour {

    /** The warm end, degC: what a house with animals is held against. */
    double warmC();

    double coldC();

    double relativeHumidityPercent();

    /** Chance of rain or snow, %; empty where nobody knows. */
    OptionalDouble rainPercent();

    OptionalDouble lightningPercent();

    /** Somebody's forecast. */
    record Forecast(
            double airC,
            double relativeHumidityPercent,
            double gustMPerS,
            OptionalDouble rainPercent,
            OptionalDouble lightningPercent)
            implements WeatherHour {
        @Override
        public double warmC() {
            return airC;
        }

        @Override
        public double coldC() {
            return airC;
        }
    }

    /**
     * The same hour of the day on the days around it in a typical year. It knows neither rain nor lightning.
     *
     * @param airC of each of those days, sorted
     * @param gustMPerS of each of those days, sorted
     */
    record Typical(List<Double> airC, List<Double> gustMPerS, double relativeHumidityPercent) implements WeatherHour {

        public Typical {
            airC = airC.stream().sorted().toList();
            gustMPerS = gustMPerS.stream().sorted().toList();
            if (airC.isEmpty() || gustMPerS.isEmpty()) {
                throw new IllegalArgumentException("a typical hour without days");
            }
        }

        /** Warmer on one of ten such days. */
        @Override
        public double warmC() {
            return airC.get((airC.size() - 1) * 9 / 10);
        }

        @Override
        public double coldC() {
            return airC.get((airC.size() - 1) / 10);
        }

        @Override
        public OptionalDouble rainPercent() {
            return OptionalDouble.empty();
        }

        @Override
        public OptionalDouble lightningPercent() {
            return OptionalDouble.empty();
        }

        double percentOver(double gust) {
            return 100.0 * gustMPerS.stream().filter(one -> one > gust).count() / gustMPerS.size();
        }

        double percentColder(double limitC) {
            return 100.0 * airC.stream().filter(one -> one < limitC).count() / airC.size();
        }
    }
}
