package org.plumbrow.estimate.guarantee;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;
import org.plumbrow.calc.finance.GuaranteeBook;
import org.plumbrow.calc.finance.GuaranteeRisk;
import org.plumbrow.calc.finance.PlayedPayouts;

/**
 * All promises of a branch for the year to come. Pure.
 *
 * @param question how bad a year, and how alike the weather of two sites is
 * @param lines what each promise may cost, the dearest in the bad year first
 * @param leftOut projects that promise something and are not in the sum, and why
 */
record BookView(
        Question question,
        List<Line> lines,
        List<LeftOut> leftOut,
        GuaranteeBook.BadYear badYear,
        PlayedPayouts badYears,
        PlayedPayouts years,
        double expectedUsd,
        GuaranteeBook.Spread spread) {

    private static final double[] SHARES = {0.5, 0.75, 0.9, 0.95, 0.99};
    private static final int STEPS = 20;
    private static final int LINES_SHOWN = 100;
    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;

    /** @param oneIn the bad year is as bad as one in so many @param correlation of the weather of two sites, 0 to 1 */
    record Question(double oneIn, double correlation) {
        /** Correlation of neighbours: common practice, no source. */
        static final Question USUAL = new Question(10, 0.7);

        public String year() {
            return "one-in-" + BookView.plain(oneIn);
        }
    }

    /** @param year of the guarantee that runs in the year to come @param of how many years it has @param handedOver whether it has begun */
    record Line(
            UUID projectId,
            String number,
            String project,
            String weather,
            int year,
            int of,
            boolean handedOver,
            GuaranteeBook.Contract contract) {

        public GuaranteeRisk risk() {
            return contract.risk();
        }
    }

    /** A line with what it owes in the bad year. */
    record Owing(Line line, double usd) {}

    record LeftOut(UUID projectId, String number, String project, String why) {}

    /** The promises that stand on one typical year. */
    record OfWeather(String weather, int promises, double expectedUsd, double badYearUsd) {}

    /** A payout that so many of 100 years do not exceed. */
    record Level(int ofHundred, double usd) {}

    /** A step of payouts: from, to, and what share of the years lie in it. @param height of its bar, 0 to 100 */
    record Step(double fromUsd, double toUsd, double share, long height) {}

    static BookView of(Question question, List<Line> lines, List<LeftOut> leftOut) {
        GuaranteeBook book =
                new GuaranteeBook(lines.stream().map(Line::contract).toList(), question.correlation());
        return new BookView(
                question,
                lines,
                leftOut,
                book.badYear(question.oneIn()),
                PlayedPayouts.ofBadYears(book, question.oneIn(), PlayedPayouts.ROUNDS),
                PlayedPayouts.ofYears(book, PlayedPayouts.ROUNDS),
                book.expectedPayoutUsd(),
                book.spread());
    }

    /** The dearest first. */
    List<Owing> owing() {
        return IntStream.range(0, lines.size())
                .mapToObj(at ->
                        new Owing(lines.get(at), badYear.contracts().get(at).usd()))
                .sorted(Comparator.comparingDouble(Owing::usd)
                        .reversed()
                        .thenComparing(one -> one.line().number()))
                .toList();
    }

    public List<Owing> shown() {
        return owing().stream().limit(LINES_SHOWN).toList();
    }

    public int more() {
        return Math.max(0, lines.size() - LINES_SHOWN);
    }

    public double moreUsd() {
        return owing().stream().skip(LINES_SHOWN).mapToDouble(Owing::usd).sum();
    }

    public List<OfWeather> byWeather() {
        Map<String, OfWeather> sums = new LinkedHashMap<>();
        owing().forEach(one -> sums.merge(
                one.line().weather(),
                new OfWeather(one.line().weather(), 1, one.line().risk().expectedPayoutUsd(), one.usd()),
                (a, b) -> new OfWeather(
                        a.weather(),
                        a.promises() + b.promises(),
                        a.expectedUsd() + b.expectedUsd(),
                        a.badYearUsd() + b.badYearUsd())));
        return List.copyOf(sums.values());
    }

    public List<Level> levels() {
        return Arrays.stream(SHARES)
                .mapToObj(share -> new Level((int) Math.round(100 * share), years.quantileUsd(share)))
                .toList();
    }

    /** Payouts of the years as they come, in equal steps up to what 99 of 100 years do not exceed. */
    public List<Step> steps() {
        double most = years.quantileUsd(SHARES[SHARES.length - 1]);
        if (most <= 0) {
            return List.of();
        }
        double[] shares = years.shares(most, STEPS);
        double highest = Arrays.stream(shares).max().orElse(1);
        return IntStream.range(0, STEPS)
                .mapToObj(step -> new Step(
                        step * most / STEPS,
                        (step + 1) * most / STEPS,
                        shares[step],
                        Math.round(100 * shares[step] / highest)))
                .toList();
    }

    public String heading() {
        if (lines.isEmpty()) {
            return "Production: no promise can be counted yet";
        }
        return "If next year is a %s bad year, about %s is owed".formatted(question.year(), usd(badYear.expectedUsd()));
    }

    /** "In eight of ten such years $8,100 to $14,300." */
    public String range() {
        return "In eight of ten such years %s to %s; on average over good and bad years %s a year."
                .formatted(usd(badYears.quantileUsd(LOW)), usd(badYears.quantileUsd(HIGH)), usd(expectedUsd));
    }

    public long notHandedOver() {
        return lines.stream().filter(line -> !line.handedOver()).count();
    }

    public String usd(double amount) {
        return Usd.of(amount);
    }

    static String plain(double figure) {
        return figure == Math.rint(figure) ? Long.toString((long) figure) : Double.toString(figure);
    }
}
