package org.plumbrow.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.github.kagkarlsson.scheduler.Scheduler;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestBrowser;
import org.plumbrow.TestWorld;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.web.Role;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.transaction.support.TransactionTemplate;

/** Two applications on one PostgreSQL, as behind a load balancer. */
@PlumbrowTest
class TwoNodesTest {

    private static final Duration SOON = Duration.ofSeconds(60);

    @Autowired
    BackgroundRuns runs;

    @Autowired
    Scheduler scheduler;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Environment environment;

    @Autowired
    MockMvcTester mvc;

    @Autowired
    Credentials credentials;

    @Autowired
    TestWorld world;

    private static AnotherNode other;

    @BeforeEach
    void startTheOther() {
        if (other == null) {
            other = AnotherNode.beside(environment);
        }
    }

    @AfterAll
    static void stopTheOther() {
        if (other != null) {
            other.close();
            other = null;
        }
    }

    @AfterEach
    void goOn() {
        scheduler.resume();
    }

    @Test
    void whoSignedInOnOneIsSignedInOnTheOtherAndWhatOneAsksForTheOtherDoes() throws Exception {
        Visitor tamsin = world.person("Tamsin", world.branch().id(), Role.PROJECT_MANAGER);
        credentials.change(tamsin.personId(), "grommet lantern quarry fig");
        TestBrowser browser = new TestBrowser(mvc);
        browser.signIn(tamsin.email(), "grommet lantern quarry fig");
        assertThat(other.get("/you", "SESSION=" + browser.cookie("SESSION")).body())
                .contains("Tamsin, project manager in");
        assertThat(other.get("/you", "SESSION=none").statusCode()).isEqualTo(302);

        scheduler.pause();
        Run run = over(world.branch().id(), WatchedWork.behaving(progress -> "Done by the one that was free."));
        assertThat(run.outcome()).isEqualTo("Done by the one that was free.");
    }

    @Test
    void nothingIsDoneTwiceWhenBothAreFree() {
        UUID branch = world.branch().id();
        List<UUID> asked = IntStream.range(0, 30)
                .mapToObj(number -> start(branch, WatchedWork.behaving(progress -> "Done.")))
                .toList();
        for (UUID id : asked) {
            assertThat(whenOver(branch, id).tries()).isEqualTo(1);
        }
    }

    @Test
    void aNodeThatShutsDownHandsItsRunOver() {
        UUID branch = world.branch().id();
        AtomicInteger begun = new AtomicInteger();
        scheduler.pause();
        UUID id = start(branch, WatchedWork.behaving(progress -> {
            if (begun.incrementAndGet() == 1) {
                await().atMost(SOON).until(progress::isStopped);
                return "Left off.";
            }
            return "Done by the one that stays.";
        }));
        await().atMost(SOON).until(() -> begun.get() == 1);
        stopTheOther();
        scheduler.resume();
        Run run = whenOver(branch, id);
        assertThat(run.state()).isEqualTo(Run.State.DONE);
        assertThat(run.outcome()).isEqualTo("Done by the one that stays.");
    }

    @Test
    void aRunWhoseNodeFellSilentIsBegunAnewByAnother() {
        UUID branch = world.branch().id();
        scheduler.pause();
        UUID id = start(branch, WatchedWork.behaving(progress -> "Done by the one that lives."));
        anotherNodeTookItAndFellSilent(branch, id);
        scheduler.resume();
        Run run = whenOver(branch, id);
        assertThat(run.outcome()).isEqualTo("Done by the one that lives.");
        assertThat(run.tries()).isEqualTo(2);
    }

    @Test
    void aRunThatBringsDownOneNodeAfterTheOtherIsGivenUp() {
        UUID branch = world.branch().id();
        scheduler.pause();
        UUID id = start(branch, WatchedWork.behaving(progress -> "Never reached."));
        anotherNodeTookItAndFellSilent(branch, id);
        inBranch(branch, "update background_run set tries = 3 where id = ?", id);
        scheduler.resume();
        Run run = whenOver(branch, id);
        assertThat(run.state()).isEqualTo(Run.State.FAILED);
        assertThat(run.outcome()).isEqualTo("Given up: begun 3 times and broken off each time.");
    }

    private void anotherNodeTookItAndFellSilent(UUID branch, UUID id) {
        inBranch(
                branch,
                "update background_run set state = 'RUNNING', tries = 1, started_at = now() - interval '1 hour' where id = ?",
                id);
        jdbc.sql("""
                        update scheduled_tasks set picked = true, picked_by = 'a dead node', version = version + 1,
                            last_heartbeat = now() - interval '1 hour'
                        where task_instance = ?
                        """).param(id.toString()).update();
    }

    private void inBranch(UUID branch, String sql, UUID id) {
        BranchWall.within(
                branch,
                () -> transaction.execute(status -> jdbc.sql(sql).param(id).update()));
    }

    private Run over(UUID branch, UUID subject) {
        return whenOver(branch, start(branch, subject));
    }

    private UUID start(UUID branch, UUID subject) {
        return BranchWall.within(
                branch, () -> transaction.execute(status -> runs.start(WatchedWork.KIND, branch, subject, "Ines")));
    }

    private Run whenOver(UUID branch, UUID id) {
        await().atMost(SOON)
                .until(() -> BranchWall.within(branch, () -> runs.find(id))
                        .orElseThrow()
                        .isOver());
        return BranchWall.within(branch, () -> runs.find(id)).orElseThrow();
    }
}
