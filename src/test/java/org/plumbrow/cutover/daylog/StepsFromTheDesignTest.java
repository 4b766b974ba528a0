package org.plumbrow.cutover.daylog;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestClock;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.cutover.CutoverFixture;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.cutover.CutoverWay.Opening;
import org.plumbrow.cutover.StepsOfDay;
import org.plumbrow.database.Ids;
import org.plumbrow.design.draft.DesignEditing;
import org.plumbrow.design.draft.Designs;
import org.plumbrow.design.draft.Revisions;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Part;
import org.plumbrow.survey.SurveyBook;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** Tap, devices and meter of the day's steps come from the frozen design and the survey; a later revision is noticed. */
@PlumbrowTest
class StepsFromTheDesignTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    TestClock clock;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    DesignEditing editing;

    @Autowired
    Designs designs;

    @Autowired
    Revisions revisions;

    @Autowired
    SurveyBook survey;

    @Autowired
    StepsOfDay steps;

    @Autowired
    DayLogBook book;

    @Autowired
    DayTaps taps;

    @Autowired
    LogSteps logSteps;

    private Ground ground;
    private UUID home;

    @BeforeEach
    void aHomeWithATapDrawn() {
        ground = fixture.ground();
        home = fixture.noticeGiven(ground, fixture.home(ground));
        world.as(ground.branch().designer(), () -> {
            editing.begin(home, null, Map.of());
            keep(Part.ARRAYS, -1, array());
            keep(
                    Part.DEVICES,
                    -1,
                    Cells.of(
                            "mark",
                            "D1",
                            "kind",
                            "FUSED_DISCONNECT",
                            "name",
                            "AC disconnect",
                            "ratedA",
                            60,
                            "ratedV",
                            240,
                            "place",
                            "north wall"));
        });
        freeze(-1, "SUPPLY_SIDE_TAP");
    }

    private void keep(Part part, long version, Cells cells) {
        assertThat(editing.keep(home, part, version, List.of(cells))).isEmpty();
    }

    private void freeze(long version, String kind) {
        world.as(ground.branch().designer(), () -> {
            keep(Part.CONNECTION, version, Cells.of("kind", kind, "breakerA", 60, "place", "meter base"));
            assertThat(revisions.freeze(home, designs.draft(home).facts().version(), ""))
                    .isEmpty();
        });
    }

    private static Cells array() {
        return Cells.of(
                "mark",
                "A1",
                "mounting",
                "PITCHED_ROOF",
                "onDwelling",
                "yes",
                "tiltDeg",
                30,
                "azimuthDeg",
                180,
                "module",
                "Module 550 W",
                "portrait",
                "yes",
                "modulesHigh",
                2,
                "modulesWide",
                "8");
    }

    private MvcTestResult get(String page) {
        return pages.get(ground.branch().projectManager(), "/projects/" + home + page);
    }

    private String text(MvcTestResult answer) {
        return TestPages.read(answer).text();
    }

    private MvcTestResult make(String revision) {
        return pages.post(
                ground.branch().projectManager(), "/projects/" + home + "/outage/steps", "revision", revision);
    }

    private Opening opening() {
        return world.as(ground.branch().projectManager(), () -> steps.inForce(home))
                .orElseThrow()
                .opening();
    }

    private void meter(Map<String, String> readings) {
        world.as(ground.branch().manager(), () -> survey.fill(home, "service", readings));
    }

    @Test
    void theMeterThatTheSurveySawDecidesHowTheUtilityTakesThePower() {
        assertThat(opening()).isEqualTo(Opening.UTILITY);
        meter(Map.of("meter_number", "700411"));
        assertThat(opening()).isEqualTo(Opening.METER);
        freeze(0, "BREAKER_AT_FAR_END");
        assertThat(opening()).isEqualTo(Opening.MAIN);
    }

    @Test
    void aMeterOnCurrentTransformersStays() {
        meter(Map.of("meter_number", "700411", "ct_ratio", "400:5"));
        assertThat(opening()).isEqualTo(Opening.TRANSFORMER);
    }

    @Test
    void theReadinessPageSaysThatTheDesignHasChangedSinceTheStepsWereMade() {
        assertThat(text(get("/outage/readiness"))).contains("Not made yet from design revision A.");
        assertThat(make("A")).hasStatus3xxRedirection();
        assertThat(text(get("/outage/readiness")))
                .contains("Made from design revision A. Connection: tap ahead of the main, meter base.");
        freeze(0, "BREAKER_AT_FAR_END");
        assertThat(text(get("/outage/readiness")))
                .contains("Made from design revision A; the design has changed, revision B is in force.");
        assertThat(make("A")).as("looked at the older ones").hasStatus(422);
        assertThat(text(get("/outage/steps")))
                .contains("Made from revision A, but revision B is in force")
                .contains("Main opened")
                .contains("D1 AC disconnect (north wall)");
        assertThat(make("B")).hasStatus3xxRedirection();
        assertThat(text(get("/outage/readiness"))).contains("Made from design revision B.");
    }

    @Test
    void nobodyGoesOnBeforeWhoOfTheUtilityIsNamed() {
        meter(Map.of("meter_number", "700411"));
        clock.standAt("2027-03-26T12:00:00Z");
        taps.upTo(ground.branch().projectManager(), home, "H1");
        LogSteps.Work nobody = work("");
        assertThat(world.as(ground.branch().projectManager(), () -> logSteps.done(home, nobody))
                        .refusals())
                .singleElement()
                .satisfies(no ->
                        assertThat(no.sentence()).isEqualTo("Write the name: who of the utility removes the meter."));
        assertThat(text(get("/day-log"))).contains("Utility removes the meter").contains("design revision A");
        assertThat(world.as(ground.branch().projectManager(), () -> logSteps.done(home, work("Perrin, utility")))
                        .isStored())
                .isTrue();
    }

    private static LogSteps.Work work(String who) {
        return new LogSteps.Work(Ids.next(), "4", Map.of(), Map.of(), (LocalTime) null, Map.of(), who);
    }

    @Test
    void anotherServiceThanTheDrawnOneIsNotBegun() {
        world.as(ground.branch().designer(), () -> {
            keep(Part.SITE, -1, Cells.of("service", "SINGLE_PHASE_120_240"));
            assertThat(revisions.freeze(home, designs.draft(home).facts().version(), ""))
                    .isEmpty();
        });
        clock.standAt("2027-03-26T12:00:00Z");
        assertThat(world.as(ground.branch().projectManager(), () -> book.open(home, Service.WYE_208_120, "Tamsin")))
                .hasValueSatisfying(no -> assertThat(no.sentence()).startsWith("Design revision B says 120/240 V"));
        assertThat(world.as(
                        ground.branch().projectManager(),
                        () -> book.open(home, Service.SINGLE_PHASE_120_240, "Tamsin")))
                .isEmpty();
    }
}
