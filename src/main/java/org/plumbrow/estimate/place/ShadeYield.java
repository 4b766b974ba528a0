package org.plumbrow.estimate.place;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.energy.Horizon;
import org.plumbrow.calc.energy.HorizonChange;
import org.plumbrow.estimate.EnergyInputs;
import org.plumbrow.estimate.EstimateFacts;

/**
 * The year under two horizons.
 *
 * @param again whether day one is held against what was read before; else the one reading against nothing around
 * @param contractKwh guaranteed a year; null where the contract names none
 */
record ShadeYield(
        boolean again,
        HorizonChange change,
        EstimateFacts.Weather weather,
        @Nullable Integer contractKwh) {

    record MonthRow(String month, double from, double to, double change, double percent) {}

    /** @param from empty for nothing around */
    static ShadeYield of(EnergyInputs inputs, Optional<Horizon> from, Horizon to, @Nullable Integer contractKwh) {
        HorizonChange change =
                new HorizonChange(months(inputs, from), months(inputs, Optional.of(to)), inputs.spread());
        return new ShadeYield(from.isPresent(), change, inputs.weather(), contractKwh);
    }

    private static List<Double> months(EnergyInputs inputs, Optional<Horizon> around) {
        return Arrays.stream(inputs.yieldUnder(around).kwhByMonth()).boxed().toList();
    }

    public List<MonthRow> months() {
        return Arrays.stream(Month.values()).map(this::row).toList();
    }

    private MonthRow row(Month month) {
        double from = change.fromKwh().get(month.ordinal());
        double to = change.toKwh().get(month.ordinal());
        return new MonthRow(name(month), from, to, to - from, 100 * change.shareOf(month.getValue()));
    }

    private static String name(Month month) {
        return month.getDisplayName(TextStyle.SHORT, Locale.US);
    }

    public String worstMonth() {
        return Month.of(change.worstMonth()).getDisplayName(TextStyle.FULL, Locale.US);
    }

    public double worstPercent() {
        return 100 * change.shareOf(change.worstMonth());
    }

    /** Beyond what the gate to designed lets pass under the contract's figure. */
    public boolean isBelowContract() {
        return contractKwh != null && change.toOfYear() < (1 - HorizonChange.TOLD_FROM_SHARE) * contractKwh;
    }

    /** Of the contract's figure, negative below it; null without one. */
    public @Nullable Double percentOfContract() {
        return contractKwh == null || contractKwh == 0 ? null : 100 * (change.toOfYear() / contractKwh - 1);
    }
}
