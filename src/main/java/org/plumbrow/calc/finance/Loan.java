package org.plumbrow.calc.finance;

import org.plumbrow.calc.Range;

/**
 * A loan paid back evenly at the end of each month, at the nominal yearly rate over 12.
 *
 * @param principalUsd 0 to 100,000,000
 * @param yearlyRate 0 to 0.5
 * @param months 1 to 600
 */
public record Loan(double principalUsd, double yearlyRate, int months) {

    public static final Range PRINCIPAL = new Range(0, 100_000_000, "USD");
    public static final Range RATE = new Range(0, 0.5, "a year");
    public static final Range MONTHS = new Range(1, 600, "months");

    /** @throws Range.OutOfRange if a value is outside its range or not a number */
    public Loan {
        PRINCIPAL.check("loan", principalUsd);
        RATE.check("interest", yearlyRate);
        MONTHS.check("duration of the loan", months);
    }

    /** principal i / (1 - (1 + i)^-n), principal / n without interest; USD a month. */
    public double monthlyUsd() {
        double monthly = yearlyRate / 12;
        return monthly == 0 ? principalUsd / months : principalUsd * monthly / (1 - Math.pow(1 + monthly, -months));
    }
}
