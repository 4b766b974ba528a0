package org.plumbrow.estimate.savings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.finance.Incentive;
import org.plumbrow.calc.finance.Loan;
import org.plumbrow.calc.finance.Savings;
import org.plumbrow.calc.finance.SavingsRange;
import org.plumbrow.web.Words;

/** The answers of the page in words, each as a range and with the sum that leads to it. */
final class SavingsFigures {

    private final SavingsBook.Basis basis;
    private final SavingsTerms terms;
    private final SavingsRange range;
    private final Words words;

    SavingsFigures(SavingsBook.Basis basis, Words words) {
        this.basis = basis;
        this.terms = basis.kept().terms();
        this.range = basis.range();
        this.words = words;
    }

    /**
     * @param key of its name
     * @param how the sum with its own figures, line by line
     */
    record Figure(String key, String low, String likely, String high, List<String> how) {}

    /** What hangs on the price is only there when the contract names one. */
    List<Figure> all() {
        List<Figure> all = new ArrayList<>();
        all.add(figure("estimate.savings.bill", one -> usd(one.billUsd()), bill()));
        if (basis.priceUsd() != null) {
            all.add(figure("estimate.savings.net", one -> usd(one.netUsd() - one.upfrontUsd()), net()));
            all.add(figure("estimate.savings.simple", one -> years(one.simplePaybackYears()), simple()));
            all.add(figure("estimate.savings.payback", one -> years(one.paybackYears()), payback()));
            all.add(figure("estimate.savings.npv", one -> usd(one.npvUsd()), npv()));
            all.add(figure("estimate.savings.irr", one -> percent(one.irr()), irr()));
            all.add(figure("estimate.savings.lcoe", one -> perKwh(one.levelisedUsdPerKwh()), lcoe()));
        }
        return all;
    }

    private Figure figure(String key, Function<Savings, String> value, List<String> how) {
        return new Figure(key, value.apply(range.low()), value.apply(range.likely()), value.apply(range.high()), how);
    }

    private List<String> bill() {
        Savings.Year first = range.likely().years().get(0);
        double share = range.likely().asked().production().onSiteShare();
        double fixed = range.likely().asked().tariff().addedFixedUsd();
        List<String> how = new ArrayList<>();
        how.add("Year 1: %s kWh × (%s %% used on site × %s + %s %% given × %s) − %s of added fixed charges = %s."
                .formatted(
                        words.number(first.kwh(), 0),
                        words.number(100 * share, 1),
                        rate(terms.ratePerKwh()),
                        words.number(100 - 100 * share, 1),
                        rate(terms.exportPerKwh()),
                        usd(fixed),
                        usd(first.billUsd())));
        how.add("Each later year: production × (1 − %s), price and fixed charges × (1 + %s), credit × (1 + %s)."
                .formatted(
                        percent(terms.degradationPercent()),
                        percent(terms.escalationPercent()),
                        percent(terms.exportEscalationPercent())));
        how.add("All %d years added, unrounded: %s."
                .formatted(terms.years(), usd(range.likely().billUsd())));
        how.add(ends());
        return how;
    }

    /** What low and high mean. */
    String ends() {
        double spread = basis.facts().spread().share(terms.years());
        return ("Low: the production that is exceeded in %s %% of cases (as the mean of %d years, spread %s), and prices"
                        + " that rise by %s a year less. High: the mirror of both.")
                .formatted(
                        exact(terms.confidencePercent()),
                        terms.years(),
                        percent(Optional.of(spread)),
                        percent(terms.apartPercent()));
    }

    private List<String> net() {
        Savings likely = range.likely();
        double upkeep =
                likely.years().stream().mapToDouble(Savings.Year::operatingUsd).sum();
        double later =
                likely.years().stream().mapToDouble(Savings.Year::incentivesUsd).sum();
        return List.of(
                "%s saved on the bill − %s of upkeep + %s of later incentives − %s for the purchase = %s."
                        .formatted(
                                usd(likely.billUsd()),
                                usd(upkeep),
                                usd(later),
                                usd(likely.upfrontUsd()),
                                usd(likely.netUsd() - likely.upfrontUsd())),
                purchase());
    }

    private String purchase() {
        Savings likely = range.likely();
        double price = likely.asked().costs().priceUsd();
        return "Purchase: price of the contract %s less %s of incentives that come with it."
                .formatted(usd(price), usd(price - likely.upfrontUsd()));
    }

    private List<String> simple() {
        Savings likely = range.likely();
        return List.of(
                "Purchase over what the first year brings: %s / %s."
                        .formatted(
                                usd(Math.max(0, likely.upfrontUsd())),
                                usd(likely.years().get(0).netUsd())),
                purchase());
    }

    private List<String> payback() {
        return List.of(
                "The moment at which the sum since the purchase passes zero, even within its year: see the years below.",
                purchase());
    }

    private List<String> npv() {
        return List.of(
                "What each year brings / (1 + %s)^year, each at the year’s end, added; less the purchase of %s."
                        .formatted(
                                percent(terms.discountPercent()),
                                usd(range.likely().upfrontUsd())),
                "Taxes and a loan are not in it.");
    }

    private List<String> irr() {
        return List.of(
                "The yearly discount at which the worth today is nothing, found by halving. None where nothing is"
                        + " paid, or where less comes back than any rate looked at can explain.");
    }

    private List<String> lcoe() {
        return List.of(
                "(Purchase + upkeep + added fixed charges − later incentives) / kWh made, each year’s figures / (1 +"
                        + " %s)^year.".formatted(percent(terms.discountPercent())),
                "To be held against the price of a bought kWh, %s in year 1.".formatted(rate(terms.ratePerKwh())));
    }

    /** After how long it pays for itself, likely; null where it does not, or where the contract names no price. */
    @Nullable
    String paidBack() {
        return basis.priceUsd() == null || range.likely().paybackYears().isEmpty()
                ? null
                : years(range.likely().paybackYears());
    }

    /** A loan beside the bill of the first year; null without one. */
    @Nullable
    LoanView loan() {
        Loan loan = terms.loan();
        if (loan == null) {
            return null;
        }
        double paid = loan.monthlyUsd() * loan.months();
        double bill = range.likely().years().get(0).billUsd() / 12;
        return new LoanView(
                usd(loan.monthlyUsd()),
                usd(bill),
                loan.months(),
                usd(paid - loan.principalUsd()),
                "%s × i / (1 − (1 + i)^−%d), i = %s / 12."
                        .formatted(usd(loan.principalUsd()), loan.months(), percent(Optional.of(loan.yearlyRate()))));
    }

    record LoanView(String monthly, String billMonthly, int months, String interest, String how) {}

    /** "Rebate: $2,000 with the purchase"; "Per kWh: $0.02 for each kWh, years 1 to 5". */
    String line(Incentive line) {
        String amount = switch (line.kind()) {
            case AMOUNT -> usd(line.amount());
            case SHARE_OF_PRICE -> percent(Optional.of(line.amount())) + " of the price";
            case PER_KWH -> rate(line.amount()) + " for each kWh made";
        };
        int last = line.firstYear() + line.years() - 1;
        String when = line.firstYear() == last
                ? (last == 0 ? "with the purchase" : "year " + last)
                : "years %d to %d".formatted(line.firstYear(), last);
        return amount + ", " + when;
    }

    String usd(double usd) {
        return words.money(SavingsYears.whole(usd));
    }

    /** With every decimal that was typed. */
    String rate(double usd) {
        return "$" + exact(usd);
    }

    String percent(double percent) {
        return exact(percent) + " %";
    }

    private static String exact(double value) {
        return Written.figure(value).toPlainString().replace('-', '−');
    }

    private String percent(Optional<Double> share) {
        return share.map(known -> words.number(100 * known, 1) + " %").orElse("none");
    }

    private String years(Optional<Double> years) {
        return years.map(known -> words.number(known, 1) + " years")
                .orElse("not within %d years".formatted(terms.years()));
    }

    private String perKwh(Optional<Double> usd) {
        return usd.map(known -> "$" + words.number(known, 3)).orElse("none");
    }
}
