package org.plumbrow.estimate.savings;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.finance.Incentive;
import org.plumbrow.calc.finance.Loan;
import org.plumbrow.calc.finance.SavingsCase;
import org.plumbrow.web.Entered;

/** The terms of the savings, as typed. One blank line of money from others always stands behind the rest. */
record SavingsForm(
        @Nullable String years,
        @Nullable String rate,
        @Nullable String escalation,
        @Nullable String export,
        @Nullable String exportEscalation,
        @Nullable String fixedBefore,
        @Nullable String fixedAfter,
        @Nullable String degradation,
        @Nullable String upkeep,
        @Nullable String upkeepEscalation,
        @Nullable String discount,
        @Nullable String confidence,
        @Nullable String apart,
        List<IncentiveForm> incentives,
        @Nullable String loan,
        @Nullable String loanRate,
        @Nullable String loanMonths,
        @Nullable String version) {

    private static final int MOST_LINES = 20;
    private static final Range LOAN_RATE = new Range(0, 50, "% a year");

    SavingsForm {
        List<IncentiveForm> all = new ArrayList<>();
        for (int at = 0; incentives != null && at < Math.min(MOST_LINES, incentives.size()); at++) {
            IncentiveForm sent = incentives.get(at);
            all.add(sent == null ? IncentiveForm.BLANK : sent);
        }
        if (all.isEmpty() || (!all.get(all.size() - 1).isBlank() && all.size() < MOST_LINES)) {
            all.add(IncentiveForm.BLANK);
        }
        incentives = all;
    }

    static SavingsForm of(SavingsRows.Kept kept) {
        SavingsTerms terms = kept.terms();
        Loan loan = terms.loan();
        return new SavingsForm(
                String.valueOf(terms.years()),
                exact(terms.ratePerKwh()),
                exact(terms.escalationPercent()),
                exact(terms.exportPerKwh()),
                exact(terms.exportEscalationPercent()),
                exact(terms.fixedBeforeUsd()),
                exact(terms.fixedAfterUsd()),
                exact(terms.degradationPercent()),
                exact(terms.upkeepUsd()),
                exact(terms.upkeepEscalationPercent()),
                exact(terms.discountPercent()),
                exact(terms.confidencePercent()),
                exact(terms.apartPercent()),
                terms.incentives().stream().map(IncentiveForm::of).toList(),
                loan == null ? "" : exact(loan.principalUsd()),
                loan == null
                        ? ""
                        : SavingsTerms.percent(loan.yearlyRate())
                                .stripTrailingZeros()
                                .toPlainString(),
                loan == null ? "" : String.valueOf(loan.months()),
                String.valueOf(kept.version()));
    }

    /** With every decimal: a rate may have more than are usually shown. */
    private static String exact(double value) {
        return Written.figure(value).toPlainString();
    }

    SavingsTerms read(Entered entered) {
        return new SavingsTerms(
                years(entered),
                entered.required("rate", "what a bought kWh costs", rate, SavingsCase.RATE),
                entered.required("escalation", "its yearly rise", escalation, SavingsTerms.RISE),
                entered.required("export", "the credit for a kWh", export, SavingsCase.RATE),
                entered.required(
                        "exportEscalation", "the yearly rise of the credit", exportEscalation, SavingsTerms.RISE),
                entered.required("fixedBefore", "the fixed charges without it", fixedBefore, SavingsTerms.FIXED),
                entered.required("fixedAfter", "the fixed charges with it", fixedAfter, SavingsTerms.FIXED),
                entered.required("degradation", "the fading", degradation, SavingsTerms.DEGRADATION),
                entered.required("upkeep", "the upkeep", upkeep, SavingsTerms.UPKEEP),
                entered.required(
                        "upkeepEscalation", "the yearly rise of the upkeep", upkeepEscalation, SavingsTerms.RISE),
                entered.required("discount", "the discount", discount, SavingsTerms.DISCOUNT),
                entered.required("confidence", "the confidence", confidence, SavingsTerms.CONFIDENCE),
                entered.required("apart", "how far prices may differ", apart, SavingsTerms.APART),
                incentives(entered),
                loan(entered));
    }

    private int years(Entered entered) {
        String what = "for how many years";
        Integer read = entered.whole("years", what, years, SavingsTerms.YEARS);
        if (read == null && !entered.errors().hasFieldErrors("years")) {
            entered.refuse(
                    "years", "Write %s as a whole number from %s.".formatted(what, Entered.hint(SavingsTerms.YEARS)));
        }
        return read == null ? 1 : read;
    }

    private List<Incentive> incentives(Entered entered) {
        List<Incentive> read = new ArrayList<>();
        for (int at = 0; at < incentives.size(); at++) {
            if (!incentives.get(at).isBlank()) {
                read.add(incentives.get(at).read("incentives[%d].".formatted(at), entered));
            }
        }
        return read;
    }

    /** All three, or none. */
    private @Nullable Loan loan(Entered entered) {
        if (noneOf(loan, loanRate, loanMonths)) {
            return null;
        }
        double usd = entered.required("loan", "the amount of the loan", loan, Loan.PRINCIPAL);
        BigDecimal percent = entered.number("loanRate", "the interest", loanRate, LOAN_RATE);
        if (percent == null && !entered.errors().hasFieldErrors("loanRate")) {
            entered.refuse("loanRate", "Write the interest as a number from " + Entered.hint(LOAN_RATE) + ".");
        }
        Integer months = entered.whole("loanMonths", "the loan’s duration", loanMonths, Loan.MONTHS);
        if (months == null && !entered.errors().hasFieldErrors("loanMonths")) {
            entered.refuse(
                    "loanMonths",
                    "Write the loan’s duration as a whole number from " + Entered.hint(Loan.MONTHS) + ".");
        }
        return percent == null || months == null ? null : new Loan(usd, SavingsTerms.share(percent), months);
    }

    private static boolean noneOf(@Nullable String... typed) {
        return java.util.Arrays.stream(typed).allMatch(one -> Entered.text(one).isEmpty());
    }

    /** Every field, for the page that lays theirs beside yours and for the journal. */
    List<Written> written() {
        List<Written> all = new ArrayList<>(List.of(
                Written.of("Years", "years", years),
                Written.of("A bought kWh, USD", "rate", rate),
                Written.of("Its rise, % a year", "escalation", escalation),
                Written.of("Credit for a kWh, USD", "export", export),
                Written.of("Rise of the credit, % a year", "exportEscalation", exportEscalation),
                Written.of("Fixed charges before, USD a month", "fixedBefore", fixedBefore),
                Written.of("Fixed charges after, USD a month", "fixedAfter", fixedAfter),
                Written.of("Fading, % a year", "degradation", degradation),
                Written.of("Upkeep, USD a year", "upkeep", upkeep),
                Written.of("Rise of the upkeep, % a year", "upkeepEscalation", upkeepEscalation),
                Written.of("Discount, % a year", "discount", discount),
                Written.of("Confidence, %", "confidence", confidence),
                Written.of("Prices apart, % a year", "apart", apart)));
        for (int at = 0; at < incentives.size(); at++) {
            if (!incentives.get(at).isBlank()) {
                all.addAll(incentives.get(at).written(at));
            }
        }
        all.add(Written.of("Loan, USD", "loan", loan));
        all.add(Written.of("Interest, % a year", "loanRate", loanRate));
        all.add(Written.of("Loan, months", "loanMonths", loanMonths));
        return all;
    }
}
