package org.plumbrow.permit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestClock;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.database.BranchWall;
import org.plumbrow.project.ProjectFixture;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** Somebody hears of a wait once for each of its days, in the morning of a working day. The wait is due on Friday, March 5. */
@PlumbrowTest
class WaitRemindersTest {

    private static final LocalDate FRIDAY = LocalDate.of(2027, 3, 5);

    @Autowired
    WaitReminders reminders;

    @Autowired
    AwaitedBook book;

    @Autowired
    ProjectFixture projects;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    TestClock clock;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private TestBranch branch;
    private UUID project;
    private UUID wait;

    @BeforeEach
    void modulesAreDueOnFriday() {
        clock.standAt("2027-02-01T15:00:00Z");
        branch = world.branch();
        project = projects.aDairyGroundMount().in(branch).build();
        wait = UUID.randomUUID();
        world.as(
                branch.projectManager(),
                () -> assertThat(book.add(modules(-1, FRIDAY))).isEmpty());
    }

    private Awaited modules(long version, LocalDate promised) {
        return new Awaited(
                wait,
                version,
                project,
                AwaitedKind.MODULES_DELIVERY,
                "",
                "",
                OwedBy.SUPPLIER,
                null,
                null,
                "Alder Supply",
                FRIDAY.minusDays(40),
                promised,
                null,
                null,
                null,
                null,
                null,
                "");
    }

    private List<String> letters() {
        return BranchWall.within(
                branch.id(),
                () -> transaction.execute(
                        status -> jdbc.sql("select body from notice where about = ? order by created_at, id")
                                .param("waits:" + project)
                                .query(String.class)
                                .list()));
    }

    private int told(String instant) {
        int before = letters().size();
        clock.standAt(instant);
        reminders.remind();
        reminders.remind();
        return letters().size() - before;
    }

    @Test
    void onceBeforeTheDayAndOnceAfterItInWorkingMornings() {
        assertThat(told("2027-03-02T14:00:00Z")).isZero();
        assertThat(told("2027-03-03T12:00:00Z")).as("seven in the morning").isZero();
        int readers = told("2027-03-03T14:00:00Z");
        assertThat(readers).isPositive();
        assertThat(letters().get(0)).contains("Alder Supply should be here by Fri, Mar 5, 2027");
        assertThat(told("2027-03-04T14:00:00Z")).isZero();
        assertThat(told("2027-03-06T14:00:00Z")).as("Saturday").isZero();
        assertThat(told("2027-03-08T14:00:00Z")).isEqualTo(readers);
        assertThat(letters().get(letters().size() - 1)).contains("should have been here by Fri, Mar 5, 2027");
    }

    @Test
    void aNewPromiseIsRemindedOfAnewAndThePageSaysWhatWent() {
        assertThat(told("2027-03-03T14:00:00Z")).isPositive();
        world.as(
                branch.projectManager(),
                () -> assertThat(book.change(modules(0, FRIDAY.plusDays(7)))).isEmpty());
        assertThat(told("2027-03-08T14:00:00Z")).isZero();
        assertThat(told("2027-03-10T14:00:00Z")).isPositive();
        var answer = pages.get(branch.projectManager(), "/projects/" + project + "/waits/" + wait);
        assertThat(TestPages.read(answer).select("section[aria-labelledby=reminded] li"))
                .hasSize(2);
    }
}
