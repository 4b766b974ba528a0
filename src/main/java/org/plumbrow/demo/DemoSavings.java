package org.plumbrow.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.finance.Incentive;
import org.plumbrow.calc.finance.Loan;
import org.plumbrow.demo.DemoCast.Cast;
import org.plumbrow.demo.DemoProjects.Told;
import org.plumbrow.estimate.savings.SavingsBook;
import org.plumbrow.estimate.savings.SavingsTerms;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Access;
import org.springframework.stereotype.Component;

/** What the savings of some projects are worked out with, written by the project manager before the contract is signed. */
@Component
@WithDemo
class DemoSavings implements DemoChapter {

    private static final LocalTime AT_TEN = LocalTime.of(10, 0);

    private final SavingsBook savings;
    private final Access access;
    private final List<SeedRow> terms;
    private final List<SeedRow> incentives;

    DemoSavings(SavingsBook savings, Access access) {
        this.savings = savings;
        this.access = access;
        this.terms = SeedRow.of("savings.csv");
        this.incentives = SeedRow.of("incentives.csv");
    }

    @Override
    public void before(Stage stage, Told told, Cast cast, Story story, LocalDate day) {
        if (stage == Stage.SIGNED) {
            terms.stream()
                    .filter(row -> row.text("key").equals(told.key()))
                    .forEach(row -> StoryClock.at(
                            story.at(day, AT_TEN),
                            () -> access.as(
                                    cast.visitor(told.row().text("project_manager")),
                                    () -> savings.change(told.id(), -1, terms(row)))));
        }
    }

    private SavingsTerms terms(SeedRow row) {
        return new SavingsTerms(
                row.whole("years"),
                figure(row, "rate"),
                figure(row, "rise"),
                figure(row, "credit"),
                figure(row, "credit_rise"),
                figure(row, "fixed_before"),
                figure(row, "fixed_after"),
                figure(row, "fading"),
                figure(row, "upkeep"),
                figure(row, "upkeep_rise"),
                figure(row, "discount"),
                figure(row, "confidence"),
                figure(row, "apart"),
                incentives.stream()
                        .filter(line -> line.text("key").equals(row.text("key")))
                        .map(DemoSavings::incentive)
                        .toList(),
                loan(row));
    }

    private static Incentive incentive(SeedRow line) {
        return new Incentive(
                line.text("name"),
                Incentive.Kind.valueOf(line.text("kind")),
                figure(line, "amount"),
                line.whole("first_year"),
                line.whole("years"));
    }

    private static @Nullable Loan loan(SeedRow row) {
        return row.has("loan")
                ? new Loan(
                        figure(row, "loan"),
                        row.figure("loan_percent").movePointLeft(2).doubleValue(),
                        row.whole("loan_months"))
                : null;
    }

    private static double figure(SeedRow row, String column) {
        return row.figure(column).doubleValue();
    }
}
