package org.plumbrow.calc.finance;

import org.plumbrow.calc.Range;

/**
 * Money from others, as it is typed.
 *
 * @param name as people call it
 * @param kind how it is counted
 * @param amount USD, share of the price (0 to 1) or USD/kWh, by kind
 * @param firstYear 0 = with the purchase; 1 = at the end of the first year
 * @param years for how many years running, 1 to 40
 */
public record Incentive(String name, Kind kind, double amount, int firstYear, int years) {

    public static final Range AMOUNT = new Range(0, 100_000_000, "USD");
    public static final Range YEARS = new Range(1, 40, "years");

    /** How an incentive is counted. */
    public enum Kind {
        AMOUNT,
        SHARE_OF_PRICE,
        PER_KWH
    }

    /** @throws Range.OutOfRange if a value is outside its range or not a number */
    public Incentive {
        (kind == Kind.SHARE_OF_PRICE ? new Range(0, 1, "of the price") : AMOUNT).check(name, amount);
        YEARS.check(name + ", years", years);
        new Range(0, 40, "years").check(name + ", first year", firstYear);
    }

    double usd(int year, double price, double kwh) {
        if (year < firstYear || year >= firstYear + years) {
            return 0;
        }
        return switch (kind) {
            case AMOUNT -> amount;
            case SHARE_OF_PRICE -> amount * price;
            case PER_KWH -> amount * kwh;
        };
    }
}
