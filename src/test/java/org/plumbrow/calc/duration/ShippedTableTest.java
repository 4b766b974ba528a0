package org.plumbrow.calc.duration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ShippedTableTest {

    private static final DurationTables TABLES = ShippedTable.all();

    /** z of the 10 and 90 of 100 points of the normal distribution. */
    private static final double Z90 = 1.2816;

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/duration/working-time.csv", numLinesToSkip = 2)
    void everyPublishedRateIsShipped(
            String code, String low, String typical, String high, int crewLeast, int crewMost, double firstUnitDays) {
        WorkRate rate = TABLES.rate(code);
        assertThat(List.of(rate.low(), rate.typical(), rate.high()))
                .containsExactly(middle(low), middle(typical), middle(high));
        assertThat(List.of(rate.crewLeast(), rate.crewMost())).containsExactly(crewLeast, crewMost);
        assertThat(rate.firstUnitDays()).isEqualTo(firstUnitDays);
    }

    private static double middle(String cell) {
        int dash = cell.indexOf('-');
        return dash < 0
                ? Double.parseDouble(cell)
                : (Double.parseDouble(cell.substring(0, dash)) + Double.parseDouble(cell.substring(dash + 1))) / 2;
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/duration/waits.csv", numLinesToSkip = 2)
    void everyPublishedWaitIsShippedWithItsMean(
            String code, WaitTime.DayKind kind, double least, double usual, double most, double mean) {
        WaitTime wait = TABLES.wait(code);
        assertThat(wait.days()).isEqualTo(new Spread(least, usual, most));
        assertThat(wait.dayKind()).isEqualTo(kind);
        assertThat(wait.days().mean()).isCloseTo(mean, within(0.05));
        assertThat(wait.meanDays()).isEqualTo(mean);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/duration/measured-waits.csv", numLinesToSkip = 2)
    void theMeasuredWaitsHaveTheirLogNormalPoints(String code, double median, double mean, double sigma) {
        WaitTime wait = TABLES.wait(code);
        assertThat(wait.shape()).isEqualTo(WaitTime.Shape.LOG_NORMAL);
        assertThat(wait.days().typical()).isEqualTo(median);
        assertThat(wait.meanDays()).isEqualTo(mean);
        assertThat(Math.sqrt(2 * Math.log(mean / median))).isCloseTo(sigma, within(0.001));
        assertThat(wait.days().low()).isCloseTo(median * Math.exp(-Z90 * sigma), within(0.06));
        assertThat(wait.days().high()).isCloseTo(median * Math.exp(Z90 * sigma), within(0.06));
    }

    @Test
    void nothingElseIsShippedThanWhatIsPublished() {
        assertThat(ShippedTable.rates()).hasSize(22);
        assertThat(ShippedTable.waits()).hasSize(22);
    }

    @Test
    void everyRowSaysItsSourceOrThatThereIsNone() {
        assertThat(TABLES.rate("trench").sourceWords()).isEqualTo("common practice, no source");
        assertThat(TABLES.rate("concrete-piers").sourceWords()).contains("racking maker's foundation guide");
        assertThat(TABLES.wait("measured-review").sourceWords()).contains("87 utilities");
        assertThat(TABLES.wait("agreement").sourceWords()).isEqualTo("common practice, no source");
    }

    /** 60 posts at 45 a day; ten crew-days of 50 posts learnt on top of five of the table. */
    @ParameterizedTest
    @CsvSource({"500, 10, 48.333", "225, 5, 45", "0, 5, 22.5"})
    void theTableCountsAsFiveCrewDaysOfEvidence(double quantity, double crewDays, double learnt) {
        WorkRate rate = PaceLearning.of(TABLES.rate("driven-posts"), List.of(new DoneWork(quantity, crewDays)))
                .rate();
        assertThat(rate.typical()).isCloseTo(learnt, within(0.001));
    }
}
