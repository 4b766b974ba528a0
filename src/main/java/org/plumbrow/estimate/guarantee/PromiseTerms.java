package org.plumbrow.estimate.guarantee;

import java.time.LocalDate;
import java.time.Period;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.finance.GuaranteeTerms;
import org.plumbrow.calc.finance.TrueUp;
import org.plumbrow.web.Entered;

/**
 * What a contract says of its promise beside the kWh of the first year, as people write it.
 *
 * @param rateUsd what a missing kWh costs in year 1
 * @param rateGrowsPercent a year
 * @param settledYears years settled together
 * @param fadesPercent by which the promise falls each later year
 * @param systemFadesPercent by which the production is expected to; an assumption and not of the contract
 * @param freePercent of the promise that may be missing without payment
 * @param carriesWeather the firm carries bad years; else the promise follows the light of the year
 * @param keepsSurplus surplus of good years is used before money flows; not counted in any figure
 * @param beginsOn first day of the first year; null until the system is handed over
 */
public record PromiseTerms(
        double rateUsd,
        double rateGrowsPercent,
        int years,
        int settledYears,
        double fadesPercent,
        double systemFadesPercent,
        double freePercent,
        boolean carriesWeather,
        boolean keepsSurplus,
        @Nullable LocalDate beginsOn) {

    static final Range RATE = new Range(TrueUp.RATE.least(), TrueUp.RATE.most(), "dollars for each kWh");
    static final Range GROWS = new Range(-10, 20, "% a year");
    static final Range YEARS = GuaranteeTerms.YEARS;
    static final Range FADES = new Range(0, 5, "% a year");
    static final Range FREE = new Range(0, 30, "% of the promise");

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE, MMM d, yyyy", Locale.US);

    /** Half a percent a year, where nobody has said otherwise: median of published studies (Jordan and Kurtz, Photovoltaic Degradation Rates). */
    static final double USUAL_FADING = 0.5;
    /** What confidence is reckoned with while the contract's terms are not known. */
    static final PromiseTerms USUAL = new PromiseTerms(0, 0, 10, 1, USUAL_FADING, USUAL_FADING, 0, true, false, null);

    GuaranteeTerms calc() {
        return new GuaranteeTerms(
                rateUsd,
                rateGrowsPercent / 100,
                years,
                settledYears,
                fadesPercent / 100,
                freePercent / 100,
                carriesWeather);
    }

    /** The guarantee's year that runs on this day, or begins next: 1 before the first; more than {@link #years} when it is over. */
    int yearAt(LocalDate day) {
        return beginsOn == null || day.isBefore(beginsOn)
                ? 1
                : Period.between(beginsOn, day).getYears() + 1;
    }

    public String settledWords() {
        return settledYears == 1 ? "each year by itself" : settledYears + " years together";
    }

    public String weatherWords() {
        return carriesWeather ? "the firm carries bad years" : "the promise follows the light of the year";
    }

    public String surplusWords() {
        return keepsSurplus ? "used first in later years" : "not kept";
    }

    public String beginsWords() {
        return beginsOn == null ? "the hand-over" : DAY.format(beginsOn);
    }

    /** Every field, for the page that lays theirs beside yours and for the journal. */
    List<Written> written() {
        return List.of(
                Written.of("Owed for a missing kWh, dollars", "rate", Entered.written(rateUsd)),
                Written.of("Growth of that rate, % a year", "rateGrows", Entered.written(rateGrowsPercent)),
                Written.of("Years", "years", years),
                Written.of("Years settled together", "settled", settledYears),
                Written.of("Promise falls, % a year", "fades", Entered.written(fadesPercent)),
                Written.of("System expected to fade, % a year", "systemFades", Entered.written(systemFadesPercent)),
                Written.of("May be missing without payment, %", "free", Entered.written(freePercent)),
                Written.of("Bad weather", "weather", carriesWeather ? "carried" : "adjusted", weatherWords()),
                Written.of("Surplus of good years", "surplus", keepsSurplus ? "kept" : "lost", surplusWords()),
                Written.of("First year begins on", "beginsOn", beginsOn, beginsWords()));
    }
}
