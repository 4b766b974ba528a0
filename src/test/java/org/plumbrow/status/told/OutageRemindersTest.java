package org.plumbrow.status.told;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestClock;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.cutover.OutageChoice;
import org.plumbrow.cutover.OutagePlanning;
import org.plumbrow.cutover.OutageRecords;
import org.plumbrow.cutover.Outages;
import org.plumbrow.database.BranchWall;
import org.plumbrow.notice.NoticeState;
import org.plumbrow.project.JournalLine;
import org.plumbrow.project.JournalReader;
import org.plumbrow.project.ProjectCourse;
import org.plumbrow.status.StatusFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** Who was told of an outage weeks ago hears of it again, twice and not more often. The outage is on Friday, March 26. */
@PlumbrowTest
class OutageRemindersTest {

    private static final String WEDNESDAY_9 = "2027-03-24T13:00:00Z";
    private static final String THURSDAY_9 = "2027-03-25T13:00:00Z";

    @Autowired
    OutageReminders reminders;

    @Autowired
    CutoverFixture cutovers;

    @Autowired
    StatusFixture status;

    @Autowired
    OutagePlanning planning;

    @Autowired
    OutageRecords records;

    @Autowired
    Outages outages;

    @Autowired
    ProjectCourse course;

    @Autowired
    JournalReader journal;

    @Autowired
    TestWorld world;

    @Autowired
    TestClock clock;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private Ground ground;
    private UUID project;
    private Visitor pm;

    @BeforeEach
    void anOutageThatTheCustomerWasToldOf() {
        ground = cutovers.ground();
        project = cutovers.noticeGiven(ground, cutovers.dairy(ground));
        pm = ground.branch().projectManager();
    }

    private record Letter(String subject, String body, String shortText, NoticeState state) {}

    private List<Letter> letters() {
        return BranchWall.within(
                ground.branch().id(),
                () -> transaction.execute(status -> jdbc.sql(
                                "select subject, body, short_text, state from notice where about = ? order by created_at, id")
                        .param("outage-reminder:" + project)
                        .query((row, n) -> new Letter(
                                row.getString("subject"),
                                row.getString("body"),
                                row.getString("short_text"),
                                NoticeState.valueOf(row.getString("state"))))
                        .list()));
    }

    private void at(String instant) {
        clock.standAt(instant);
        reminders.remind();
    }

    @Test
    void theyHearOfItTwoDaysAndOneDayBeforeAndAtNoOtherTime() {
        at("2027-03-23T13:00:00Z");
        at("2027-03-24T11:59:00Z");
        assertThat(letters())
                .as("not three days before, not before eight in the morning")
                .isEmpty();
        at("2027-03-24T12:00:00Z");
        at(WEDNESDAY_9);
        assertThat(letters())
                .singleElement()
                .satisfies(letter -> assertThat(letter.subject())
                        .isEqualTo(
                                "Your power will be off on Friday, March 26, from 9:00 to about 10:30 in the morning"));
        at(THURSDAY_9);
        at("2027-03-25T20:00:00Z");
        at("2027-03-26T13:00:00Z");
        assertThat(letters()).hasSize(2);
        assertThat(letters().get(1).subject())
                .isEqualTo(
                        "Tomorrow, Friday, March 26, your power will be off, from 9:00 to about 10:30 in the morning");
        assertThat(letters()).extracting(Letter::state).containsExactly(NoticeState.WITHDRAWN, NoticeState.WAITING);
    }

    @Test
    void theLetterSaysWhatToDoAndBringsTheirOwnPage() {
        String path = status.link(ground.branch(), project);
        at(THURSDAY_9);
        Letter letter = letters().get(0);
        assertThat(letter.body())
                .startsWith("Tomorrow, Friday, March 26, your power will be off")
                .contains("Plan for 1 hour 30 minutes to 2 hours without power.")
                .contains("If the weather is bad Tuesday, March 30")
                .contains("- Milk: be done with milking.")
                .contains(path)
                .contains("You get this because we told you of this power cut before.");
        assertThat(letter.shortText()).hasSizeLessThanOrEqualTo(160).contains("Tomorrow");
        List<JournalLine> lines = world.as(pm, () -> journal.newest(project, 1));
        assertThat(lines.get(0).sentence()).isEqualTo("Reminder of the outage to the customer, 1 day before.");
    }

    @Test
    void whoeverWasToldOnlyTodayIsNotRemindedToday() {
        clock.standAt(THURSDAY_9);
        world.as(pm, () -> records.customerTold(project, LocalDate.of(2027, 3, 25), "by telephone"));
        reminders.remind();
        assertThat(letters()).isEmpty();
    }

    @Test
    void aDayThatTheCustomerWasNotToldOfIsNotRemindedOf() {
        ground = cutovers.ground();
        project = cutovers.booked(ground, cutovers.home(ground));
        at(WEDNESDAY_9);
        at(THURSDAY_9);
        assertThat(letters()).isEmpty();
    }

    @Test
    void aProjectOnHoldIsNotRemindedAndIsOnceItGoesOn() {
        world.as(pm, () -> course.hold(project, course.course(project).version(), "Loan", null));
        at(WEDNESDAY_9);
        assertThat(letters()).isEmpty();
        world.as(pm, () -> course.resume(project, course.course(project).version(), "Loan is there"));
        at("2027-03-24T15:00:00Z");
        assertThat(letters()).hasSize(1);
    }

    @Test
    void aReminderThatStillWaitsIsTakenBackWhenTheDayMoves() {
        at(WEDNESDAY_9);
        OutageChoice later =
                new OutageChoice(LocalDate.of(2027, 4, 15), CutoverFixture.NINE, 90, ground.crewId(), null, null);
        world.as(pm, () -> {
            long version = outages.live(project).orElseThrow().version();
            assertThat(planning.move(project, version, later, "The utility asked"))
                    .isEmpty();
        });
        assertThat(letters()).extracting(Letter::state).containsExactly(NoticeState.WITHDRAWN);
        at(THURSDAY_9);
        assertThat(letters()).hasSize(1);
    }

    @Test
    void twoNodesAtOnceRemindOnce() {
        clock.standAt(WEDNESDAY_9);
        CompletableFuture<Void> other = CompletableFuture.runAsync(reminders::remind);
        reminders.remind();
        other.join();
        assertThat(letters()).hasSize(1);
    }
}
