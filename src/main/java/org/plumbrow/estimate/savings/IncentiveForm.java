package org.plumbrow.estimate.savings;

import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.finance.Incentive;
import org.plumbrow.calc.finance.Incentive.Kind;
import org.plumbrow.web.Entered;

/** One line of money from others, as typed. A line with neither name nor amount is none. */
record IncentiveForm(
        @Nullable String name,
        @Nullable String kind,
        @Nullable String amount,
        @Nullable String firstYear,
        @Nullable String years) {

    static final IncentiveForm BLANK = new IncentiveForm("", Kind.AMOUNT.name(), "", "0", "1");

    private static final int LONGEST_NAME = 60;
    private static final Range PERCENT = new Range(0, 100, "% of the price");
    private static final Range PER_KWH = new Range(0, 5, "USD for each kWh");
    private static final Range FIRST_YEAR = new Range(0, 40, "");

    static IncentiveForm of(Incentive line) {
        BigDecimal amount = line.kind() == Kind.SHARE_OF_PRICE
                ? SavingsTerms.percent(line.amount()).stripTrailingZeros()
                : Written.figure(line.amount());
        return new IncentiveForm(
                line.name(),
                line.kind().name(),
                amount.toPlainString(),
                String.valueOf(line.firstYear()),
                String.valueOf(line.years()));
    }

    boolean isBlank() {
        return Entered.text(name).isEmpty() && Entered.text(amount).isEmpty();
    }

    /** Only when nothing is refused is the line one that can be counted. */
    Incentive read(String row, Entered entered) {
        String called = entered.given(row + "name", "what this money is called", name, LONGEST_NAME);
        Kind counted = entered.choice(row + "kind", Kind.class, kind).orElse(Kind.AMOUNT);
        BigDecimal typed = entered.number(row + "amount", "the amount", amount, limits(counted));
        if (typed == null && !entered.errors().hasFieldErrors(row + "amount")) {
            entered.refuse(row + "amount", "Write the amount as a number from " + Entered.hint(limits(counted)) + ".");
        }
        Integer first = entered.whole(row + "firstYear", "the first year", firstYear, FIRST_YEAR);
        Integer often = entered.whole(row + "years", "for how many years", years, Incentive.YEARS);
        return new Incentive(
                called, counted, counted(typed, counted), first == null ? 0 : first, often == null ? 1 : often);
    }

    private static double counted(@Nullable BigDecimal typed, Kind kind) {
        if (typed == null) {
            return 0;
        }
        return kind == Kind.SHARE_OF_PRICE ? SavingsTerms.share(typed) : typed.doubleValue();
    }

    private static Range limits(Kind kind) {
        return switch (kind) {
            case AMOUNT -> Incentive.AMOUNT;
            case SHARE_OF_PRICE -> PERCENT;
            case PER_KWH -> PER_KWH;
        };
    }

    /** As people read the kind of a line. */
    static String words(Kind kind) {
        return switch (kind) {
            case AMOUNT -> "dollars";
            case SHARE_OF_PRICE -> "% of the price";
            case PER_KWH -> "dollars for each kWh made";
        };
    }

    private static String words(@Nullable String kind) {
        return java.util.Arrays.stream(Kind.values())
                .filter(known -> known.name().equals(kind))
                .findFirst()
                .map(IncentiveForm::words)
                .orElse("");
    }

    List<Written> written(int at) {
        String row = "incentives[%d].".formatted(at);
        String label = "Incentive %d".formatted(at + 1);
        return List.of(
                Written.of(label, row + "name", name),
                Written.of(label + ", counted in", row + "kind", kind, words(kind)),
                Written.of(label + ", amount", row + "amount", amount),
                Written.of(label + ", first year", row + "firstYear", firstYear),
                Written.of(label + ", years", row + "years", years));
    }
}
