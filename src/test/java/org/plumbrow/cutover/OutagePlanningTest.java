package org.plumbrow.cutover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.plumbrow.cutover.CutoverFixture.FRIDAY_26;
import static org.plumbrow.cutover.CutoverFixture.NINE;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.database.BranchWall;
import org.plumbrow.notice.NoticeKind;
import org.plumbrow.notice.NoticeLeft;
import org.plumbrow.notice.NoticeLine;
import org.plumbrow.notice.NoticeState;
import org.plumbrow.notice.Outbox;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.NotForYourRole;
import org.plumbrow.web.Refusal;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** Holding, booking, moving and cancelling an outage, and who is told. */
@PlumbrowTest
class OutagePlanningTest {

    @Autowired
    TestWorld world;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    OutagePlanning planning;

    @Autowired
    OutageRecords records;

    @Autowired
    Outages outages;

    @Autowired
    Outbox outbox;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    ApplicationEventPublisher events;

    private Ground ground;
    private UUID project;

    @BeforeEach
    void aDairyWithItsUtility() {
        ground = fixture.ground();
        project = fixture.dairy(ground);
    }

    private <T> T asPm(Supplier<T> work) {
        return world.as(ground.branch().projectManager(), work);
    }

    private OutageFacts live() {
        return asPm(() -> outages.live(project).orElseThrow());
    }

    private List<NoticeLine> letters() {
        return asPm(() -> outbox.ofProject(project));
    }

    private List<String> journal() {
        return BranchWall.everywhere(() -> transaction.execute(
                status -> jdbc.sql("select sentence from project_journal where project_id = ? order by number")
                        .param(project)
                        .query(String.class)
                        .list()));
    }

    private static List<String> sentences(List<Refusal> refusals) {
        return refusals.stream().map(Refusal::sentence).toList();
    }

    private OutageChoice on(LocalDate day, LocalTime start) {
        return new OutageChoice(day, start, 90, ground.crewId(), null, null);
    }

    @Test
    void bookingWritesBothNoticesAndTheJournal() {
        fixture.booked(ground, project);
        assertThat(live().state()).isEqualTo(OutageState.BOOKED);
        assertThat(letters())
                .extracting(NoticeLine::kind)
                .containsExactlyInAnyOrder(NoticeKind.UTILITY, NoticeKind.CUSTOMER);
        assertThat(letters())
                .extracting(NoticeLine::subject)
                .contains(
                        "Outage request: Friday, March 26, 9:00 am to 10:30 am, 4 Sedge Hollow Road, Quillback",
                        "Power off Friday, March 26, 9:00 am to 10:30 am, Sedge Hollow Dairy");
        assertThat(journal()).contains("Outage booked: Fri, Mar 26, 2027, 9:00 am, 90 min.");
    }

    private List<LocalDate> appointmentAnsweredOn() {
        return BranchWall.everywhere(() -> transaction.execute(
                status -> jdbc.sql("""
                        select finished_on from activity
                         where project_id = ? and code = 'CUTOVER_APPOINTMENT' and finished_on is not null""").param(project).query(LocalDate.class).list()));
    }

    @Test
    void whoHasTheDayWaitsForNoAppointmentUntilItIsCancelled() {
        project = fixture.signedDairy(ground);
        assertThat(appointmentAnsweredOn()).isEmpty();
        fixture.noticeGiven(ground, project);
        assertThat(appointmentAnsweredOn()).containsExactly(LocalDate.of(2027, 3, 1));
        asPm(() -> planning.move(project, live().version(), on(LocalDate.of(2027, 3, 29), NINE), "Crew ill"));
        assertThat(appointmentAnsweredOn()).containsExactly(LocalDate.of(2027, 3, 1));
        asPm(() -> planning.cancel(project, live().version(), "Roof first"));
        assertThat(appointmentAnsweredOn()).isEmpty();
    }

    @Test
    void aDayThatIsOnlyHeldTellsNobody() {
        asPm(() -> planning.hold(project, fixture.friday(ground)));
        assertThat(live().state()).isEqualTo(OutageState.PROPOSED);
        assertThat(letters()).isEmpty();
        asPm(() -> {
            planning.bookHeld(project, live().version());
            return true;
        });
        assertThat(live().state()).isEqualTo(OutageState.BOOKED);
        assertThat(letters()).hasSize(2);
    }

    @Test
    void aSecondWindowIsRefusedInWords() {
        fixture.booked(ground, project);
        assertThat(sentences(asPm(() -> planning.book(project, on(LocalDate.of(2027, 3, 29), NINE)))))
                .containsExactly("A window is set already: Fri, Mar 26. Move that one, with a reason.");
    }

    @Test
    void twoPeopleWhoBookAtOnceLeaveOneWindow() throws Exception {
        Callable<Boolean> book = () -> {
            try {
                return asPm(() -> planning.book(project, fixture.friday(ground)).isEmpty());
            } catch (DataIntegrityViolationException other) {
                return false;
            }
        };
        var pool = Executors.newFixedThreadPool(2);
        try {
            long booked = pool.invokeAll(List.of(book, book)).stream()
                    .filter(one -> {
                        try {
                            return one.get();
                        } catch (Exception e) {
                            throw new IllegalStateException(e);
                        }
                    })
                    .count();
            assertThat(booked).isEqualTo(1);
        } finally {
            pool.shutdown();
        }
    }

    @Test
    void noticeThatIsTooShortNamesTheLastDay() {
        assertThat(sentences(asPm(() -> planning.book(project, on(LocalDate.of(2027, 3, 15), NINE)))))
                .containsExactly(
                        "The utility needs 10 full working days. For Mon, Mar 15 the notice must leave by Fri, Feb 26.");
    }

    @Test
    void theSameCrewIsNotAtTwoCutovers() {
        fixture.booked(ground, project);
        UUID neighbour = fixture.home(ground);
        assertThat(sentences(asPm(() -> planning.book(neighbour, fixture.friday(ground)))))
                .containsExactly(
                        "Crew 4 is elsewhere on Fri, Mar 26: cutover at Sedge Hollow Dairy. Choose another crew, or another day.");
    }

    @Test
    void theRainDateLiesLaterAndOnADayOfTheUtility() {
        assertThat(sentences(asPm(() -> planning.book(
                        project, new OutageChoice(FRIDAY_26, NINE, 90, ground.crewId(), FRIDAY_26, NINE)))))
                .containsExactly("The rain date lies after the day of the outage.");
        assertThat(sentences(asPm(() -> planning.book(
                        project,
                        new OutageChoice(FRIDAY_26, NINE, 90, ground.crewId(), LocalDate.of(2027, 3, 27), NINE)))))
                .containsExactly("The utility does not switch on that day. Choose another rain date.");
    }

    @Test
    void theCustomersBlackoutKeepsTheHoursFree() {
        asPm(() -> records.addBlackout(
                project,
                new Blackouts.Row(
                        UUID.randomUUID(),
                        null,
                        null,
                        org.plumbrow.branch.Weekdays.MONDAY_TO_FRIDAY,
                        LocalTime.of(10, 0),
                        LocalTime.of(12, 0),
                        "milking",
                        "Tamsin")));
        assertThat(sentences(asPm(() -> planning.book(project, fixture.friday(ground)))))
                .containsExactly("The customer needs the power: milking. Choose another start.");
    }

    @Test
    void noticeIsGivenOnceBothHaveLeft() {
        fixture.booked(ground, project);
        leaves("utility");
        assertThat(live().state()).isEqualTo(OutageState.BOOKED);
        leaves("customer");
        assertThat(live().state()).isEqualTo(OutageState.NOTICE_GIVEN);
        assertThat(live().utilityTold().how()).isEqualTo("by e-mail");
        assertThat(journal()).contains("Notice of the outage to the customer: by e-mail.");
    }

    private void leaves(String whom) {
        UUID window = live().id();
        BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> events.publishEvent(new NoticeLeft(
                UUID.randomUUID(),
                ground.branch().id(),
                project,
                "outage:" + window + ":" + whom,
                "by e-mail",
                org.plumbrow.TestClock.START))));
    }

    @Test
    void whatWasToldByHandCountsAndTheWaitingLetterIsWithdrawn() {
        fixture.noticeGiven(ground, project);
        assertThat(live().state()).isEqualTo(OutageState.NOTICE_GIVEN);
        assertThat(letters()).extracting(NoticeLine::state).containsOnly(NoticeState.WITHDRAWN);
        assertThat(asPm(() -> records.utilityTold(project, LocalDate.of(2027, 3, 2), "by letter")))
                .get()
                .extracting(Refusal::sentence)
                .isEqualTo("That day is still to come. Write the day on which it left.");
    }

    @Test
    void movingTellsOldAndNewToWhoKnewTheOldAndBeginsAnotherWindow() {
        fixture.noticeGiven(ground, project);
        OutageFacts old = live();
        assertThat(sentences(asPm(
                        () -> planning.move(project, old.version(), on(LocalDate.of(2027, 3, 29), NINE), " "))))
                .containsExactly("Write why the outage moves, 1 to 300 characters.");
        assertThat(asPm(() -> planning.move(project, old.version(), on(LocalDate.of(2027, 3, 29), NINE), "Crew ill")))
                .isEmpty();
        assertThat(live().day()).isEqualTo("2027-03-29");
        assertThat(live().state()).isEqualTo(OutageState.BOOKED);
        assertThat(live().utilityTold()).isNull();
        assertThat(asPm(() -> outages.find(old.id()).orElseThrow().state())).isEqualTo(OutageState.MOVED);
        assertThat(letters())
                .extracting(NoticeLine::subject)
                .contains("Power off moved: Friday, March 26 to Monday, March 29, 9:00 am to 10:30 am");
        assertThat(journal())
                .contains(
                        "Outage moved from Fri, Mar 26, 2027, 9:00 am, 90 min to Mon, Mar 29, 2027, 9:00 am, 90 min. Crew ill");
    }

    @Test
    void whoNeverHeardOfTheOldDayIsNotToldThatItMoved() {
        fixture.booked(ground, project);
        asPm(() -> planning.move(project, live().version(), on(LocalDate.of(2027, 3, 29), NINE), "Crew ill"));
        assertThat(letters())
                .filteredOn(letter -> letter.state() == NoticeState.WAITING)
                .extracting(NoticeLine::subject)
                .containsExactlyInAnyOrder(
                        "Power off Monday, March 29, 9:00 am to 10:30 am, Sedge Hollow Dairy",
                        "Outage request: Monday, March 29, 9:00 am to 10:30 am, 4 Sedge Hollow Road, Quillback");
    }

    @Test
    void cancellingIsToldAsPlainlyAsTheDayWas() {
        fixture.noticeGiven(ground, project);
        asPm(() -> planning.cancel(project, live().version(), "Roof first"));
        assertThat(asPm(() -> outages.live(project))).isEmpty();
        assertThat(letters())
                .extracting(NoticeLine::subject)
                .contains(
                        "Cancelled: no power cut on Friday, March 26",
                        "Outage cancelled: Friday, March 26, 4 Sedge Hollow Road, Quillback");
    }

    @Test
    void aNewerWindowIsNotOverwritten() {
        fixture.booked(ground, project);
        long opened = live().version();
        asPm(() -> records.utilityConfirms(project, "VE-77"));
        assertThat(live().utilityConfirmation()).isEqualTo("VE-77");
        assertThatThrownBy(() -> asPm(() -> planning.cancel(project, opened, "Roof first")))
                .isInstanceOf(EditedMeanwhile.class);
    }

    @Test
    void theCustomersAnswerIsKeptWithTheirWordsOutsideTheJournal() {
        fixture.booked(ground, project);
        asPm(() -> records.customerAnswers(project, false, "The vet comes that day"));
        assertThat(live().customerAnswer().agrees()).isFalse();
        assertThat(live().customerAnswer().note()).isEqualTo("The vet comes that day");
        assertThat(journal())
                .contains("The day of the outage does not work for the customer.")
                .noneMatch(line -> line.contains("vet"));
    }

    @Test
    void aDesignerDoesNotBook() {
        assertThatThrownBy(() ->
                        world.as(ground.branch().designer(), () -> planning.book(project, fixture.friday(ground))))
                .isInstanceOf(NotForYourRole.class);
    }

    @Test
    void theDatabaseRefusesWhatMustNeverBe() {
        fixture.booked(ground, project);
        for (String breach : List.of(
                "update outage_window set outage_minutes = 14",
                "update outage_window set state = 'CANCELLED'",
                "update outage_window set state = 'NOTICE_GIVEN'",
                "update outage_window set state = 'DONE'",
                "update outage_window set state = 'MOVED', state_reason = 'x'",
                "update outage_window set rain_day = day",
                "update outage_window set power_off_at = now(), power_on_at = now() - interval '1 minute'",
                "update outage_window set start_time = '23:00', outage_minutes = 90",
                "update outage_window set customer_answer = 'PERHAPS'",
                "insert into outage_window (id, version, branch_id, project_id, day, start_time, outage_minutes, state, made_at, made_by)"
                        + " select gen_random_uuid(), 0, branch_id, project_id, day, start_time, 60, 'PROPOSED', now(), 'x' from outage_window")) {
            String sql = breach + " where project_id = '" + project + "'";
            assertThat(catchThrowable(() -> BranchWall.everywhere(() -> transaction.executeWithoutResult(
                            status -> jdbc.sql(sql).update()))))
                    .as(breach)
                    .isInstanceOf(DataIntegrityViolationException.class);
        }
    }
}
