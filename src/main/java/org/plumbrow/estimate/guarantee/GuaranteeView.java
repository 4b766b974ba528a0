package org.plumbrow.estimate.guarantee;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.energy.YearSpread;
import org.plumbrow.calc.finance.GuaranteeCost;
import org.plumbrow.calc.finance.GuaranteeRisk;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.project.ProjectFacts;

/**
 * A project's promise as its page shows it.
 *
 * @param facts null while something is missing for a yield
 * @param missing for a yield, in sentences
 * @param terms null while nobody has written them: then nothing is said in money
 * @param choices from the boldest promise to the most cautious, the contract's and the tried one among them
 * @param ofContract null without a yield or without kWh in the contract
 */
record GuaranteeView(
        ProjectFacts project,
        @Nullable EstimateFacts facts,
        List<String> missing,
        @Nullable PromiseTerms terms,
        List<Choice> choices,
        @Nullable Choice ofContract) {

    private static final int[] USUAL = {50, 75, 90, 95, 99};
    private static final double BAD = 10;
    private static final double WORSE = 20;

    /**
     * One promise.
     *
     * @param percent 90 for what is exceeded in nine years of ten; 0 for one that was not chosen by confidence
     * @param tried typed on the page
     */
    record Choice(int percent, boolean contract, boolean tried, int promisedKwh, GuaranteeCost cost) {

        /** "in nine years of ten (P90)". */
        public String exceeded() {
            return switch (percent) {
                case 50 -> "in every second year (P50)";
                case 75 -> "in three years of four (P75)";
                case 90 -> "in nine years of ten (P90)";
                case 95 -> "in 19 years of 20 (P95)";
                case 99 -> "in 99 years of 100 (P99)";
                default -> "in %.0f years of 100".formatted(confidencePercent());
            };
        }

        /** Of the first settlement. */
        public GuaranteeRisk risk() {
            return cost.settlements().get(0).risk();
        }

        public double badYearUsd() {
            return cost.payoutInBadYearUsd(BAD);
        }

        public double worseYearUsd() {
            return cost.payoutInBadYearUsd(WORSE);
        }

        public double confidencePercent() {
            return 100 * cost.confidence();
        }

        /** Of the estimate, %. */
        public double sharePercent() {
            return 100 * promisedKwh / cost.estimateKwh();
        }
    }

    static GuaranteeView of(
            ProjectFacts project,
            @Nullable EstimateFacts facts,
            List<String> missing,
            @Nullable PromiseTerms terms,
            @Nullable Integer triedKwh) {
        Integer promised = project.contract().guaranteedKwhPerYear();
        if (facts == null) {
            return new GuaranteeView(project, null, missing, terms, List.of(), null);
        }
        Weighing weighing = new Weighing(facts, terms == null ? PromiseTerms.USUAL : terms);
        List<Choice> choices = new ArrayList<>();
        IntStream.of(USUAL).mapToObj(percent -> weighing.at(percent, promised)).forEach(choices::add);
        Optional<Choice> same = choices.stream().filter(Choice::contract).findFirst();
        Choice ofContract = promised == null
                ? null
                : same.orElseGet(() -> weighing.weighed(0, true, promised.equals(triedKwh), promised));
        if (ofContract != null && same.isEmpty()) {
            choices.add(ofContract);
        }
        if (triedKwh != null && choices.stream().noneMatch(each -> each.promisedKwh() == triedKwh)) {
            choices.add(weighing.weighed(0, false, true, triedKwh));
        }
        choices.sort(Comparator.comparingInt(Choice::promisedKwh).reversed());
        return new GuaranteeView(project, facts, missing, terms, List.copyOf(choices), ofContract);
    }

    private record Weighing(EstimateFacts facts, PromiseTerms terms) {

        Choice at(int percent, @Nullable Integer promised) {
            int kwh = (int) GuaranteeCost.promiseAt(facts.kwh(), spread(), terms.calc(), percent / 100.0);
            return weighed(percent, promised != null && promised == kwh, false, kwh);
        }

        Choice weighed(int percent, boolean contract, boolean tried, int kwh) {
            GuaranteeCost cost =
                    new GuaranteeCost(facts.kwh(), terms.systemFadesPercent() / 100, spread(), kwh, terms.calc());
            return new Choice(percent, contract, tried, kwh, cost);
        }

        private YearSpread spread() {
            return facts.spread();
        }
    }

    /** "$1,240", as people write it. */
    public String usd(double amount) {
        return Usd.of(amount);
    }

    /** What is carried of the spread of one year, as a share. */
    public double carriedShare() {
        return facts == null
                ? 0
                : (terms == null ? PromiseTerms.USUAL : terms)
                        .calc()
                        .carried(facts.spread())
                        .share(1);
    }

    /** Whether more years fall short of the contract's promise than not. */
    public boolean isAboveTheMiddle() {
        return ofContract != null && ofContract.confidencePercent() < 50;
    }

    /** Where the contract's promise stands; empty without one. */
    public String standing() {
        if (ofContract == null) {
            return "";
        }
        double percent = ofContract.confidencePercent();
        String stands = String.format(
                Locale.US,
                "The contract’s %,d kWh are %.1f %% of the estimate",
                ofContract.promisedKwh(),
                ofContract.sharePercent());
        if (percent < USUAL[0]) {
            return stands + " and stand above the middle year (P50): " + fallsShort(percent) + ", more than not.";
        }
        String between = "below P99";
        for (int at = 1; at < USUAL.length; at++) {
            if (percent < USUAL[at]) {
                between = "between P%d and P%d".formatted(USUAL[at - 1], USUAL[at]);
                break;
            }
        }
        return stands + " and stand " + between + ": " + fallsShort(percent) + ".";
    }

    private static String fallsShort(double percent) {
        double chance = 100 - percent;
        return chance < 1
                ? "less than 1 year of 100 makes less"
                : String.format(Locale.US, "%.0f of 100 years make less", chance);
    }
}
