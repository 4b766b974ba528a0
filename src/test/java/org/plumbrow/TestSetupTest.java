package org.plumbrow;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.plumbrow.database.BranchWall;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.transaction.support.TransactionTemplate;

/** The ground under all other tests: who they are in the database, what they count, what time it is. */
@PlumbrowTest
class TestSetupTest {

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    Clock clock;

    @Autowired
    TestClock testClock;

    @Autowired
    MockMvcTester mvc;

    @Test
    void theTestsConnectAsARoleThatTheWallStops() {
        assertThat(jdbc.sql("select rolsuper or rolbypassrls from pg_roles where rolname = current_user")
                        .query(Boolean.class)
                        .single())
                .isFalse();
    }

    @Test
    void theMigrationsHaveRun() {
        assertThat(jdbc.sql("select to_regclass('scheduled_tasks') is not null")
                        .query(Boolean.class)
                        .single())
                .isTrue();
    }

    @Test
    void aQueryIsCountedAndTheWallsOwnIsNot() {
        Queries sent = Queries.during(() -> BranchWall.everywhere(() -> transaction.executeWithoutResult(
                status -> jdbc.sql("select 42").query(Integer.class).single())));
        assertThat(sent.selects()).containsExactly("select 42");
    }

    @Test
    void theClockStandsStillUntilItIsMoved() {
        assertThat(clock.instant()).isEqualTo(TestClock.START);
        testClock.pass(Duration.ofHours(2));
        assertThat(clock.instant()).isEqualTo(TestClock.START.plusSeconds(7200));
    }

    @Test
    void thePagesCanBeAsked() {
        assertThat(mvc.get().uri("/actuator/health")).hasStatusOk();
    }
}
