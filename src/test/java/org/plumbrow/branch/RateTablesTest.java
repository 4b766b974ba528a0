package org.plumbrow.branch;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import java.util.UUID;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.account.Branches;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.duration.ShippedTable;
import org.plumbrow.calc.duration.Spread;
import org.plumbrow.calc.duration.WaitTime;
import org.plumbrow.calc.duration.WaitTime.DayKind;
import org.plumbrow.calc.duration.WaitTime.Shape;
import org.plumbrow.calc.duration.WorkRate;
import org.plumbrow.database.BranchWall;
import org.plumbrow.web.Actor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** The tables a branch starts with hold each published row, and keep what the branch changes. */
@PlumbrowTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RateTablesTest {

    @Autowired
    RateTables tables;

    @Autowired
    Branches branches;

    @Autowired
    TestWorld world;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private UUID branch;

    @BeforeAll
    void open() {
        String code = world.branch().code() + "R";
        branch = branches.open(code, "Fallow River", ZoneId.of("America/Chicago"), Actor.PLUMBROW);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/duration/working-time.csv", useHeadersInDisplayName = true)
    void everyPublishedRateIsARowOfANewBranch(
            String code, double low, String typical, String high, int crewLeast, int crewMost, double setUpDays) {
        WorkRate row = within(() -> tables.rate(branch, code).orElseThrow().row());
        assertThat(row.low()).isEqualTo(low);
        assertThat(row.typical()).isEqualTo(middle(typical));
        assertThat(row.high()).isEqualTo(middle(high));
        assertThat(row.crewLeast()).isEqualTo(crewLeast);
        assertThat(row.crewMost()).isEqualTo(crewMost);
        assertThat(row.firstUnitDays()).isEqualTo(setUpDays);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/duration/waits.csv", useHeadersInDisplayName = true)
    void everyPublishedWaitIsARowOfANewBranchAndItsMeanComesOutAsPrinted(
            String code, DayKind dayKind, double least, double usual, double most, double mean) {
        WaitTime row = within(() -> tables.wait(branch, code).orElseThrow().row());
        assertThat(row.days()).isEqualTo(new Spread(least, usual, most));
        assertThat(row.dayKind()).isEqualTo(dayKind);
        assertThat(RateTables.mean(row.days(), row.shape())).isCloseTo(mean, within(0.05));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/duration/measured-waits.csv", useHeadersInDisplayName = true)
    void theMeanOfAMeasuredWaitFollowsFromItsPoints(String code, double median, double mean, double sigma) {
        WaitTime row = within(() -> tables.wait(branch, code).orElseThrow().row());
        assertThat(row.days().typical()).isEqualTo(median);
        // the points are printed to two or three figures
        assertThat(RateTables.mean(row.days(), Shape.LOG_NORMAL)).isCloseTo(mean, within(mean * 0.01));
    }

    @Test
    void nothingIsInTheTablesThatWasNotShipped() {
        assertThat(within(() -> tables.rates(branch)))
                .hasSameSizeAs(ShippedTable.rates())
                .noneMatch(Kept::changed);
        assertThat(within(() -> tables.fixedTimes(branch)))
                .hasSameSizeAs(ShippedTable.fixedTimes())
                .noneMatch(Kept::changed);
        assertThat(within(() -> tables.waits(branch)))
                .hasSameSizeAs(ShippedTable.waits())
                .noneMatch(Kept::changed);
    }

    @Test
    void aChangedRowNamesTheBranchAsItsSourceAndKeepsWhatItIsCalled() {
        UUID own = world.branch().id();
        BranchWall.within(
                own,
                () -> transaction.execute(status -> jdbc.sql(
                                "update work_rate set typical_per_day = 50 where branch_id = ? and code = 'driven-posts'")
                        .param(own)
                        .update()));
        Kept<WorkRate> row =
                BranchWall.within(own, () -> tables.rate(own, "driven-posts")).orElseThrow();
        assertThat(row.changed()).isTrue();
        assertThat(row.row().typical()).isEqualTo(50);
        assertThat(row.row().sourceWords()).isEqualTo("the branch's own figures");
        assertThat(row.row().words()).isEqualTo(row.shipped().words());
        assertThat(row.row().equipment()).containsEntry(EquipmentKind.POST_DRIVER, 1);
        assertThat(within(
                        () -> tables.rate(branch, "driven-posts").orElseThrow().changed()))
                .as("another branch's row")
                .isFalse();
    }

    private <T> T within(java.util.function.Supplier<T> work) {
        return BranchWall.within(branch, work);
    }

    private static org.assertj.core.data.Offset<Double> within(double offset) {
        return org.assertj.core.data.Offset.offset(offset);
    }

    private static double middle(String cell) {
        String[] ends = cell.split("-");
        return (Double.parseDouble(ends[0]) + Double.parseDouble(ends[ends.length - 1])) / 2;
    }
}
