package org.plumbrow.calc.finance;

import org.plumbrow.calc.Normal;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.YearSpread;

/**
 * Savings as a range. The low end has the production that is exceeded with the confidence (as the mean of the years asked)
 * and prices that rise more slowly, the high end the mirror of both.
 */
public record SavingsRange(Savings low, Savings likely, Savings high) {

    public static final Range CONFIDENCE = new Range(0.5, 0.99, "");
    public static final Range ESCALATION_APART = new Range(0, 0.05, "a year");

    /**
     * @param spread of the production
     * @param confidence 0.9: the low production is exceeded in nine cases of ten
     * @param escalationApart how much slower or faster prices may rise, a year
     */
    public static SavingsRange of(SavingsCase likely, YearSpread spread, double confidence, double escalationApart) {
        CONFIDENCE.check("confidence", confidence);
        ESCALATION_APART.check("range of the escalation", escalationApart);
        double apart = Normal.quantile(confidence) * spread.share(Math.max(1, likely.years()));
        return new SavingsRange(
                Savings.of(likely.changed(1 - apart, -escalationApart)),
                Savings.of(likely),
                Savings.of(likely.changed(1 + apart, escalationApart)));
    }
}
