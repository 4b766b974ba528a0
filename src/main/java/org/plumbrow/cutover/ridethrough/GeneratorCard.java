package org.plumbrow.cutover.ridethrough;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.plumbrow.calc.ridethrough.Caution;
import org.plumbrow.calc.ridethrough.GeneratorCover;
import org.plumbrow.cutover.ridethrough.LoadCard.Input;

/**
 * What the generator carries on that day, and what happens if it stops half an hour into the outage.
 *
 * @param shortBy minutes by which the loads' planned ride-through then falls short; below 0 where no load is written
 */
public record GeneratorCard(GeneratorCover cover, double usableKw, double shortBy, List<Input> inputs) {

    private static final int STOPS_AT = 30;

    static GeneratorCard of(GeneratorLoad generator, LocalDate day, int outageMinutes, List<LoadCard> cards) {
        List<LoadCard> known =
                cards.stream().filter(card -> card.first().hasFigure()).toList();
        OptionalDouble planned = known.stream()
                .mapToDouble(card -> card.first().planned().orElse(Double.POSITIVE_INFINITY))
                .min();
        double shortBy = planned.isEmpty()
                ? -1
                : GeneratorCover.ifItStops(STOPS_AT, outageMinutes, planned.getAsDouble())
                        .shortByMinutes();
        return new GeneratorCard(
                generator.cover(day, outageMinutes),
                generator.on(day).usableKw(),
                shortBy,
                LoadCards.written(LoadKind.GENERATOR, generator.cells()));
    }

    public List<Row> rows() {
        return cover.checks().stream().map(GeneratorCard::row).toList();
    }

    public List<String> cautions() {
        return cover.cautions().stream().sorted().map(Caution::sentence).toList();
    }

    /** Everything asked of it is met; it may stop all the same. */
    public boolean meets() {
        return cover.isProven();
    }

    public record Row(String what, String value, String limit, boolean met) {}

    private static Row row(GeneratorCover.Check check) {
        String unit = check.asked().unit();
        return unit.isEmpty()
                ? new Row(check.asked().words(), check.met() ? "yes" : "no, or not known", "yes", check.met())
                : new Row(check.asked().words(), figure(check.value(), unit), figure(check.limit(), unit), check.met());
    }

    private static String figure(double value, String unit) {
        return Double.isNaN(value)
                ? "not known"
                : Double.isInfinite(value) ? "no load written" : String.format(Locale.US, "%,.0f %s", value, unit);
    }
}
