package org.plumbrow.schedule.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.database.Ids;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.HalfDayNumber;
import org.plumbrow.schedule.PublishedPlan;
import org.plumbrow.schedule.ScheduleFixture;
import org.plumbrow.schedule.activity.Pin;
import org.plumbrow.schedule.activity.Progress;
import org.plumbrow.web.ConstraintSentences;
import org.plumbrow.web.Refusal;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

@PlumbrowTest
class PublishingTest {

    private static final LocalDate PERMITTED_ON = LocalDate.of(2027, 2, 16);

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    Publishing publishing;

    @Autowired
    Plans plans;

    @Autowired
    PublishedPlan published;

    @Autowired
    Progress progress;

    @Autowired
    ProjectTitles titles;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    MockMvcTester mvc;

    TestBranch branch;
    UUID crew;
    UUID first;

    @BeforeEach
    void aBranchWithAPublishedPlan() {
        branch = world.branch();
        crew = schedule.crew(branch, "Crew 1");
        first = permitted("Sedge Hollow Dairy");
        schedule.planned(branch);
    }

    @Test
    void aChangeMakesADraftAndThePublishedPlanStandsUntilSomebodyPublishes() {
        LocalDate before = cutover(first);
        progressPins(first, LocalDate.of(2027, 5, 10));
        schedule.planned(branch);
        assertThat(cutover(first)).isEqualTo(before);
        int number = inBranch(() -> plans.draftHead(branch.id())).orElseThrow().number();
        assertThat(publish(draft())).isEmpty();
        assertThat(cutover(first)).isEqualTo(LocalDate.of(2027, 5, 10));
        assertThat(inBranch(() -> plans.draftHead(branch.id()))).isEmpty();
        assertThat(journal(first))
                .anySatisfy(line -> assertThat(line)
                        .startsWith("Plan " + number + " published: cutover ")
                        .contains("→ Mon, May 10, 2027"));
    }

    @Test
    void whoActsAtTheNextGateActsUntilThePublishedPlanNeedsIt() {
        LocalDate needed =
                inBranch(() -> published.needed(first, Stage.INSTALLED)).orElseThrow();
        assertThat(needed)
                .as("the last inspection is planned later, but the gate stands before that to the cutover")
                .isEqualTo(inBranch(() -> published.of(first, ActivityCode.CUTOVER))
                        .orElseThrow()
                        .finish()
                        .date());
        assertThat(inBranch(() -> published.needed(first, Stage.COMMISSIONED)))
                .contains(inBranch(() -> published.of(first, ActivityCode.HAND_OVER))
                        .orElseThrow()
                        .finish()
                        .date());
        assertThat(page("/projects/" + first + "/gates/installed")).bodyText().contains(DayWords.of(needed));
        Awaitility.await()
                .untilAsserted(() -> assertThat(page("/projects")).bodyText().contains(DayWords.of(needed)));
    }

    @Test
    void aPlanThatMovesNothingLeavesNoDraft() {
        assertThat(schedule.planned(branch).outcome()).isEqualTo("The published plan stands: no date changes.");
        assertThat(inBranch(() -> plans.draftHead(branch.id()))).isEmpty();
    }

    @Test
    void theListOfProjectsKnowsThePlannedDay() {
        assertThat(world.as(branch.manager(), () -> titles.of(first)).plannedOn())
                .isNotNull();
    }

    @Test
    void ofTwoWhoPublishAtOnceOneIsToldThatTheOtherDid() throws Exception {
        permitted("Hatch Ridge");
        schedule.planned(branch);
        UUID draft = draft();
        CountDownLatch together = new CountDownLatch(1);
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            Callable<Optional<Refusal>> one = () -> {
                together.await();
                return publish(draft);
            };
            List<Future<Optional<Refusal>>> answers = List.of(two.submit(one), two.submit(one));
            together.countDown();
            List<Optional<Refusal>> said =
                    List.of(answers.get(0).get(), answers.get(1).get());
            assertThat(said).filteredOn(Optional::isEmpty).hasSize(1);
            assertThat(said.stream().flatMap(Optional::stream))
                    .singleElement()
                    .extracting(Refusal::sentence)
                    .isEqualTo(
                            "Ines published this plan at 9:00 am, before you did. It is the plan that everybody sees.");
        } finally {
            two.shutdownNow();
        }
    }

    @Test
    void aDraftThatANewerOneReplacedIsNotPublished() {
        permitted("Hatch Ridge");
        schedule.planned(branch);
        UUID old = draft();
        permitted("Oxbow Layers");
        schedule.planned(branch);
        assertThat(publish(old))
                .map(Refusal::sentence)
                .hasValueSatisfying(sentence -> assertThat(sentence).startsWith("A newer draft (number "));
    }

    @Test
    void aDraftInWhichACrewIsBookedTwiceSaysSoAndCannotBePublished() {
        UUID second = permitted("Hatch Ridge");
        schedule.planned(branch);
        publish(draft());
        HalfDay morning = HalfDay.morning(LocalDate.of(2027, 5, 11));
        pin(first, ActivityCode.CUTOVER, morning);
        pin(second, ActivityCode.CUTOVER, morning);
        schedule.planned(branch);
        assertThat(page("/look-ahead"))
                .hasStatusOk()
                .bodyText()
                .contains("Crew 1 is booked twice")
                .contains("A draft cannot be published until one moves.");
        assertThat(publish(draft()))
                .map(Refusal::sentence)
                .hasValueSatisfying(sentence -> assertThat(sentence)
                        .startsWith("This draft cannot be published: ")
                        .contains("Move one of them"));
        assertThat(page("/look-ahead/publish"))
                .hasStatusOk()
                .bodyText()
                .contains("This draft cannot be published:")
                .doesNotContain("<button>Publish draft");
    }

    @Test
    void theDatabaseRefusesACrewInTwoPlacesWhateverTheProgramThinks() {
        UUID second = permitted("Hatch Ridge");
        schedule.planned(branch);
        publish(draft());
        assertThatThrownBy(() -> schedule.inBranch(
                        branch,
                        () -> jdbc.sql("""
                        insert into crew_booking (id, branch_id, crew_id, project_id, activity_id, half_days)
                        select ?, branch_id, crew_id, ?, activity_id, half_days from crew_booking where crew_id = ? limit 1
                        """).params(Ids.next(), second, crew).update()))
                .isInstanceOf(DataIntegrityViolationException.class)
                .satisfies(refused ->
                        assertThat(ConstraintSentences.constraint(refused)).hasValue("crew_not_double_booked"));
    }

    @Test
    void theDatabaseRefusesAMachineInTwoPlaces() {
        schedule.machine(branch, "Post driver", EquipmentKind.POST_DRIVER);
        schedule.planned(branch);
        publish(draft());
        assertThatThrownBy(() -> schedule.inBranch(
                        branch,
                        () -> jdbc.sql("""
                        insert into equipment_booking (id, branch_id, equipment_id, project_id, activity_id, half_days)
                        select ?, branch_id, equipment_id, project_id, activity_id, half_days from equipment_booking
                         where branch_id = ? limit 1
                        """).params(Ids.next(), branch.id()).update()))
                .isInstanceOf(DataIntegrityViolationException.class)
                .satisfies(refused ->
                        assertThat(ConstraintSentences.constraint(refused)).hasValue("equipment_not_double_booked"));
    }

    @Test
    void whatLiesBehindThePlansFirstDayStaysBooked() {
        HalfDay past = HalfDay.morning(LocalDate.of(2027, 2, 22));
        schedule.inBranch(
                branch,
                () -> jdbc.sql("""
                        insert into crew_booking (id, branch_id, crew_id, project_id, activity_id, half_days)
                        select ?, branch_id, ?, project_id, id, int8range(?, ?, '[]') from activity
                         where project_id = ? and key = 'racking'
                        """)
                        .params(
                                Ids.next(),
                                crew,
                                (long) HalfDayNumber.of(past),
                                (long) HalfDayNumber.of(HalfDay.afternoon(LocalDate.of(2027, 3, 2))),
                                first)
                        .update());
        progressPins(first, LocalDate.of(2027, 5, 10));
        schedule.planned(branch);
        publish(draft());
        assertThat(inBranch(() -> published.bookedOn(crew, past))).isPresent();
        assertThat(inBranch(() -> published.isFree(crew, HalfDay.morning(LocalDate.of(2027, 3, 2)))))
                .isTrue();
    }

    @Test
    void theConfirmPageSaysTheEffectInNumbersAndPublishes() {
        permitted("Hatch Ridge");
        schedule.planned(branch);
        PlanHead head = inBranch(() -> plans.draftHead(branch.id())).orElseThrow();
        PlanChanges changes = inBranch(() -> plans.changes(
                plans.published(branch.id()).orElseThrow(),
                plans.draft(branch.id()).orElseThrow()));
        assertThat(page("/look-ahead/publish"))
                .hasStatusOk()
                .bodyText()
                .contains("Publish draft " + head.number() + "?")
                .contains("%d dates of %d project"
                        .formatted(changes.moves().size(), changes.projects().size()))
                .contains("Hatch Ridge");
        MvcTestResult done = pages.post(branch.manager(), "/look-ahead/publish", "plan", draft().toString());
        assertThat(done).hasRedirectedUrl("/look-ahead/tell");
        MvcTestResult again = pages.post(
                branch.manager(), "/look-ahead/publish", "plan", publishedId().toString());
        assertThat(again).hasStatus(409).bodyText().contains("Ines published this plan at 9:00 am");
    }

    @Test
    void whatTheDatabaseRefusesIsSaidInWordsAndNothingIsPublished() {
        permitted("Hatch Ridge");
        schedule.planned(branch);
        UUID before = publishedId();
        UUID draft = draft();
        inBranch(() -> jdbc.sql("""
                update planned_activity p
                   set start_half_day = one.start_half_day, finish_half_day = one.finish_half_day
                  from (select min(start_half_day) as start_half_day, max(finish_half_day) as finish_half_day
                          from planned_activity where plan_id = :plan and crew_id is not null) one
                 where p.plan_id = :plan and p.crew_id is not null
                """).param("plan", draft).update());

        assertThat(mvc.post()
                        .uri("/look-ahead/publish")
                        .param("plan", draft.toString())
                        .with(csrf())
                        .with(world.signedIn(branch.manager())))
                .hasStatus(409)
                .bodyText()
                .contains("A crew would be in two places.");
        assertThat(publishedId()).isEqualTo(before);
        assertThat(draft()).isEqualTo(draft);
    }

    private UUID publishedId() {
        return inBranch(() -> plans.publishedHead(branch.id())).orElseThrow().id();
    }

    private UUID permitted(String name) {
        UUID project = projects.aDairyGroundMount().named(name).in(branch).build();
        schedule.reach(branch, project, Stage.PERMITTED, PERMITTED_ON);
        return project;
    }

    private void progressPins(UUID project, LocalDate cutover) {
        pin(project, ActivityCode.CUTOVER, HalfDay.morning(cutover));
    }

    private void pin(UUID project, ActivityCode code, HalfDay start) {
        schedule.inBranch(branch, () -> {
            progress.fixUnchecked(
                    project,
                    code,
                    new Pin(start, Optional.of(crew), "told the farm"),
                    branch.manager().actor());
            return start;
        });
    }

    private LocalDate cutover(UUID project) {
        return inBranch(() -> published.of(project, ActivityCode.CUTOVER))
                .orElseThrow()
                .start()
                .date();
    }

    private UUID draft() {
        return inBranch(() -> plans.draftHead(branch.id())).orElseThrow().id();
    }

    private Optional<Refusal> publish(UUID draft) {
        return world.as(branch.manager(), () -> publishing.publish(branch.id(), draft));
    }

    private List<String> journal(UUID project) {
        return inBranch(() -> jdbc.sql("select sentence from project_journal where project_id = ?")
                .param(project)
                .query(String.class)
                .list());
    }

    private <T> T inBranch(java.util.function.Supplier<T> work) {
        return schedule.inBranch(branch, work);
    }

    private MvcTestResult page(String address) {
        return pages.get(branch.manager(), address);
    }
}
