package org.plumbrow.calc.finance;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.Range;

/**
 * What is owed once the meter has been read: the difference between promise and meter at the contract's rate.
 *
 * @param promise what was promised
 * @param ratePerKwh USD/kWh in year 1, 0 to 5
 * @param escalation of the rate, a year
 */
public record TrueUp(ProductionPromise promise, double ratePerKwh, double escalation) {

    public static final Range RATE = new Range(0, 5, "USD/kWh");

    /** @throws Range.OutOfRange if a value is outside its range or not a number */
    public TrueUp {
        RATE.check("contract rate", ratePerKwh);
        SavingsCase.ESCALATION.check("escalation of the rate", escalation);
    }

    /**
     * One year.
     *
     * @param bankKwh surplus left for later years after this one
     * @param shortfallKwh that is owed, after the bank
     */
    public record Year(
            int year,
            double guaranteedKwh,
            double meteredKwh,
            double bankKwh,
            double shortfallKwh,
            double paymentUsd) {}

    /** Each year on its own: surplus stays the customer's. */
    public List<Year> eachYear(List<Double> meteredKwh) {
        return settle(meteredKwh, false);
    }

    /** Surplus of earlier years is kept and used first. */
    public List<Year> withBank(List<Double> meteredKwh) {
        return settle(meteredKwh, true);
    }

    private List<Year> settle(List<Double> meteredKwh, boolean keeps) {
        List<Year> years = new ArrayList<>();
        double bank = 0;
        for (int year = 1; year <= meteredKwh.size(); year++) {
            double metered = meteredKwh.get(year - 1);
            double guaranteed = promise.guaranteedKwh(year);
            double balance = metered - guaranteed + bank;
            bank = keeps ? Math.max(0, balance) : 0;
            double shortfall = Math.max(0, -balance);
            years.add(new Year(year, guaranteed, metered, bank, shortfall, shortfall * rate(year)));
        }
        return years;
    }

    /** Promise less meter of all years in one settlement, kWh, not below 0. */
    public double cumulativeShortfallKwh(List<Double> meteredKwh) {
        double missing = 0;
        for (int year = 1; year <= meteredKwh.size(); year++) {
            missing += promise.guaranteedKwh(year) - meteredKwh.get(year - 1);
        }
        return Math.max(0, missing);
    }

    public double rate(int year) {
        return Growth.inYear(ratePerKwh, 1 + escalation, year);
    }

    /** A promise that follows the sun of the year: promise x measured / reference irradiation. */
    public static double weatherAdjustedKwh(double guaranteedKwh, double measuredKwhPerM2, double referenceKwhPerM2) {
        return guaranteedKwh * measuredKwhPerM2 / referenceKwhPerM2;
    }

    /**
     * Share of a year's promise that falls in a part of it; the months' shares, each spread evenly over its days.
     *
     * @param monthPercent {@code double[12]}, sum 100
     * @param from first day, included
     * @param to last day, included, same year
     */
    public static double shareOfPartYear(double[] monthPercent, LocalDate from, LocalDate to) {
        double percent = 0;
        for (YearMonth month = YearMonth.from(from); !month.isAfter(YearMonth.from(to)); month = month.plusMonths(1)) {
            int first = month.equals(YearMonth.from(from)) ? from.getDayOfMonth() : 1;
            int last = month.equals(YearMonth.from(to)) ? to.getDayOfMonth() : month.lengthOfMonth();
            percent += monthPercent[month.getMonthValue() - 1] * (last - first + 1) / month.lengthOfMonth();
        }
        return percent / 100;
    }
}
