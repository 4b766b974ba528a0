package org.plumbrow.calc.finance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Every row of the table of worked values, to the digits it prints. */
class FinanceTableTest {

    private record Inputs(Map<String, String> values) {

        static Inputs of(String text) {
            return new Inputs(Arrays.stream(text.split(";"))
                    .map(each -> each.split("="))
                    .collect(Collectors.toMap(pair -> pair[0], pair -> pair[1])));
        }

        double get(String name) {
            return Double.parseDouble(values.getOrDefault(name, "0"));
        }

        int years() {
            return (int) get("years");
        }

        List<Double> list(String name) {
            return Arrays.stream(values.get(name).split("\\|"))
                    .map(Double::valueOf)
                    .toList();
        }

        double ratio() {
            return Growth.ratio(get("escalation"), get("degradation"));
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/finance/finance.csv", useHeadersInDisplayName = true)
    void everyRowAgrees(String id, String kind, String inputs, String output, String expected, String unit) {
        double precision = 0.51 * Math.pow(10, -new BigDecimal(expected).scale());
        assertThat(value(kind, output, Inputs.of(inputs))).isCloseTo(Double.parseDouble(expected), within(precision));
    }

    private static double value(String kind, String output, Inputs in) {
        return switch (kind) {
            case "savings_sum" -> savings(in, 0).netUsd();
            case "savings_sum_rounded_years" ->
                savings(in, 0).years().stream()
                        .map(year -> Cents.of(year.netUsd()))
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                        .doubleValue();
            case "savings_year" -> Growth.inYear(in.get("first_year"), in.ratio(), (int) in.get("year"));
            case "present_value" ->
                Growth.presentValue(in.get("first_year"), in.ratio(), in.get("discount"), in.years());
            case "annual_use_from_offset" -> in.get("production") / in.get("offset");
            case "size_from_use" ->
                size(in.get("use"), in.get("offset"), in.get("specific_yield"), 450)
                        .exactKwDc();
            case "modules" -> Math.ceil(in.get("size") * 1000 / in.get("module_watts"));
            case "offset_from_modules" -> offsetPercent(in);
            case "lifetime_production" -> Growth.sum(in.get("first_year"), 1 - in.get("degradation"), in.years());
            case "lifetime_production_linear" -> linear(in);
            case "payback" -> savings(in, in.get("cost")).paybackYears().orElseThrow();
            case "payback_simple" ->
                savings(in, in.get("cost")).simplePaybackYears().orElseThrow();
            case "loan_payment" ->
                new Loan(in.get("principal"), in.get("annual_rate"), (int) in.get("months")).monthlyUsd();
            case "true_up_each_year", "true_up_cumulative" -> trueUp(kind, output, in);
            case "expected_shortfall" -> risk(in).expectedShortfallKwh();
            case "probability_of_shortfall" -> risk(in).chance();
            case "portfolio_expected_shortfall" -> book(in).expectedPayoutUsd();
            case "portfolio_sigma" -> 100 * book(in).sigmaProductionShare();
            default -> throw new AssertionError(kind);
        };
    }

    private static Savings savings(Inputs in, double cost) {
        int years = in.values().containsKey("years") ? in.years() : 40;
        return Savings.of(new SavingsCase(
                years,
                new SavingsCase.Production(in.get("first_year"), in.get("degradation"), 1),
                SavingsCase.Tariff.even(1, in.get("escalation")),
                SavingsCase.Costs.price(cost),
                List.of(),
                0));
    }

    private static SizeQuestion size(double use, double offset, double yield, double moduleW) {
        return new SizeQuestion(use, offset, yield, moduleW, Stringing.NONE, 1.2, List.of());
    }

    /** The table rounds up; here that is the next larger beside the nearest. */
    private static double offsetPercent(Inputs in) {
        SystemSize size = SystemSize.of(size(in.get("use"), 0.98, in.get("specific_yield"), in.get("module_watts")));
        SizeOption up = size.larger().orElseThrow();
        assertThat(up.modules()).isEqualTo((int) in.get("modules"));
        return 100 * up.offset().orElseThrow();
    }

    private static double linear(Inputs in) {
        double sum = 0;
        for (int year = 0; year < in.years(); year++) {
            sum += in.get("first_year") * (1 - year * in.get("degradation"));
        }
        return sum;
    }

    private static double trueUp(String kind, String output, Inputs in) {
        TrueUp trueUp = new TrueUp(
                new ProductionPromise(in.get("first_year"), in.get("degradation"), in.get("guarantee")),
                in.get("rate"),
                in.get("escalation"));
        if (kind.equals("true_up_cumulative")) {
            return trueUp.cumulativeShortfallKwh(in.list("actual"));
        }
        return trueUp.eachYear(in.list("actual")).stream()
                .mapToDouble(year -> output.equals("payment") ? year.paymentUsd() : year.shortfallKwh())
                .sum();
    }

    private static GuaranteeRisk risk(Inputs in) {
        double expected = in.get("expected");
        return new GuaranteeRisk(expected, expected * in.get("sigma"), expected * in.get("guarantee"), 1);
    }

    private static GuaranteeBook book(Inputs in) {
        return new GuaranteeBook(
                in.list("expected").stream()
                        .map(kwh -> new GuaranteeBook.Contract(
                                "one", kwh, kwh * in.get("guarantee"), in.get("sigma"), 0, 1))
                        .toList(),
                in.get("correlation"));
    }
}
