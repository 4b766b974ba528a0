package org.plumbrow.calc.outage.ranking;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.plumbrow.calc.ridethrough.house.MoistAir;

/** Weather limits; the worst hour from a little before the window to two hours after it decides. */
final class WeatherRules {

    static final String CHANCE = "% chance";

    /** In a typical year: so many of the hours of that kind are beyond the limit of the weather. */
    static final String OF_HOURS = "% of such hours";

    private static final Comparator<Factor> WORSE =
            Comparator.comparing(Factor::verdict).thenComparingDouble(Factor::lacks);

    private WeatherRules() {}

    /** @param byHour judged once for every hour of the clock */
    record OfHours(List<Factor> byHour, int before, int reach) implements Rule.Hourly {

        @Override
        public Factor judge(int start) {
            Factor worst = at((start - before) / 60);
            for (int hour = (start - before) / 60 + 1; hour <= (start + reach - 1) / 60; hour++) {
                Factor other = at(hour);
                if (WORSE.compare(other, worst) > 0) {
                    worst = other;
                }
            }
            return worst;
        }

        private Factor at(int hour) {
            return byHour.get(Math.min(hour, byHour.size() - 1));
        }

        /** The first hour from this minute on that breaks it. */
        int nextBroken(int minute, int until) {
            for (int hour = (minute + 59) / 60; hour * 60 <= until; hour++) {
                if (at(hour).isBroken()) {
                    return hour * 60;
                }
            }
            return SiteClock.NEVER;
        }
    }

    static List<OfHours> of(SiteSpans site, HourQuestion question) {
        int planned = question.work().planned();
        int reach = planned + WeatherLimits.AFTER_MINUTES;
        WeatherLimits limits = question.weatherLimits();
        List<OfHours> rules = new ArrayList<>();
        rules.add(new OfHours(hours(site, question, FactorKind.WIND, hour -> wind(hour, limits)), 0, reach));
        rules.add(new OfHours(
                hours(site, question, FactorKind.RAIN, hour -> chance(FactorKind.RAIN, hour, limits)), 0, reach));
        rules.add(new OfHours(
                hours(site, question, FactorKind.LIGHTNING, hour -> chance(FactorKind.LIGHTNING, hour, limits)),
                WeatherLimits.BEFORE_LIGHTNING_MINUTES,
                reach));
        rules.add(new OfHours(hours(site, question, FactorKind.COLD, hour -> cold(hour, limits)), 0, reach));
        if (question.animals().mostThi().isPresent()) {
            double most = question.animals().mostThi().getAsDouble();
            rules.add(new OfHours(
                    hours(site, question, FactorKind.HEAT_STRESS, hour -> heatStress(hour, most)), 0, planned));
        }
        return rules;
    }

    private static List<Factor> hours(
            SiteSpans site, HourQuestion question, FactorKind kind, Function<WeatherHour, Factor> judged) {
        int count = (int) ChronoUnit.DAYS.between(site.first(), site.last().plusDays(1)) * 24;
        Factor unknown = Factor.open(kind, Double.NaN, "no weather for that hour");
        Optional<WeatherHours> weather = question.weather();
        int first = weather.map(known -> site.clock().at(known.first()) / 60).orElse(0);
        List<Factor> factors = new ArrayList<>(count);
        for (int hour = 0; hour < count; hour++) {
            int at = hour - first;
            factors.add(
                    weather.isEmpty() || at < 0 || at >= weather.get().hours().size()
                            ? unknown
                            : judged.apply(weather.get().hours().get(at)));
        }
        return factors;
    }

    private static Factor wind(WeatherHour hour, WeatherLimits limits) {
        if (hour instanceof WeatherHour.Typical typical) {
            return looked(
                    Factor.atMost(
                            FactorKind.WIND, typical.percentOver(limits.gustMPerS()), limits.typicalPercent(), ""),
                    limits.lookPercent(),
                    OF_HOURS);
        }
        return Factor.atMost(FactorKind.WIND, ((WeatherHour.Forecast) hour).gustMPerS(), limits.gustMPerS(), "");
    }

    private static Factor cold(WeatherHour hour, WeatherLimits limits) {
        if (hour instanceof WeatherHour.Typical typical) {
            return looked(
                    Factor.atMost(FactorKind.COLD, typical.percentColder(limits.coldC()), limits.typicalPercent(), ""),
                    limits.lookPercent(),
                    OF_HOURS);
        }
        return Factor.atLeast(FactorKind.COLD, hour.coldC(), limits.coldC(), "");
    }

    private static Factor chance(FactorKind kind, WeatherHour hour, WeatherLimits limits) {
        OptionalDouble percent = kind == FactorKind.RAIN ? hour.rainPercent() : hour.lightningPercent();
        double most = kind == FactorKind.RAIN ? limits.rainPercent() : limits.lightningPercent();
        return percent.isEmpty()
                ? Factor.open(kind, most, "a typical year does not know it; look at the forecast")
                : looked(
                        Factor.atMost(kind, percent.getAsDouble(), most, ""),
                        Math.min(most / 2, limits.lookPercent()),
                        CHANCE);
    }

    private static Factor looked(Factor factor, double lookPercent, String unit) {
        Factor inPercent = factor.in(unit);
        return !inPercent.isBroken() && inPercent.value() > lookPercent ? inPercent.as(Verdict.CAUTION) : inPercent;
    }

    /** Stress begins at the limit itself. */
    private static Factor heatStress(WeatherHour hour, double most) {
        double thi = MoistAir.thi(hour.warmC(), hour.relativeHumidityPercent());
        Factor factor = Factor.atMost(FactorKind.HEAT_STRESS, thi, most, "");
        return thi >= most ? factor.as(Verdict.BROKEN) : factor;
    }
}
