package org.plumbrow.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.branch.BranchSamples;
import org.plumbrow.branch.utility.UtilityEditing;
import org.plumbrow.evidence.MadeUpPhoto;
import org.plumbrow.project.JournalLine;
import org.plumbrow.project.JournalReader;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.project.gate.ItemState;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The survey as somebody fills it in on the site. */
@PlumbrowTest
class SurveyPagesTest {

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    SurveyFixture surveys;

    @Autowired
    Surveys service;

    @Autowired
    JournalReader journal;

    @Autowired
    Gates gates;

    @Autowired
    BranchSamples settings;

    @Autowired
    UtilityEditing utilities;

    @Autowired
    org.plumbrow.TestClock clock;

    private TestBranch branch;
    private UUID project;

    @BeforeEach
    void aHome() {
        branch = world.branch();
        project = projects.aHomeRoof().in(branch).build();
    }

    @Test
    void whatTheProjectsUtilityAllowsIsAskedOfTheDisconnect() {
        UUID utility = settings.utility(branch, "Valley Electric");
        project = projects.aHomeRoof().in(branch).at(utility, null).build();
        var service = new HashMap<>(SurveyFixture.Readings.home(SurveyPart.SERVICE));
        service.put("version", "0");
        service.put("disconnect_to_meter_ft", "14");
        assertThat(post(branch.projectManager(), "/service", service)).hasStatus(302);
        assertThat(page("/service").text()).contains("14 ft from the meter; the utility allows 10 ft.");
        world.as(
                branch.manager(),
                () -> utilities.change(branch.id(), utility, 0, settings.utilityTerms("Valley Electric", 30)));
        assertThat(page("/service").text()).doesNotContain("from the meter; the utility allows");
    }

    private MvcTestResult get(Visitor who, String suffix) {
        return pages.get(who, "/projects/" + project + "/survey" + suffix);
    }

    private Document page(String suffix) {
        return pages.page(branch.projectManager(), "/projects/" + project + "/survey" + suffix);
    }

    private MvcTestResult post(Visitor who, String suffix, Map<String, String> fields) {
        return pages.post(who, "/projects/" + project + "/survey" + suffix, fields);
    }

    private MvcTestResult save(String part, long version, Map<String, String> typed) {
        Map<String, String> fields = new HashMap<>(typed);
        fields.put("version", String.valueOf(version));
        return post(branch.projectManager(), "/" + part, fields);
    }

    @Test
    void theFirstSentenceCountsWhatTheDesignerLacks() {
        assertThat(page("").selectFirst("h1").text()).matches("The designer still lacks \\d+ things");
        surveys.home(branch, project);
        Document page = page("");
        assertThat(page.selectFirst("h1").text()).isEqualTo("The designer still lacks 1 thing");
        assertThat(page.select("#lacks + ul li").text()).isEqualTo("Photos: 18 photos of 18");
    }

    @Test
    void withPhotosOrReasonsItIsEnoughToDraw() {
        surveys.home(branch, project);
        for (int item = 1; item <= 24; item++) {
            post(branch.projectManager(), "/photos/" + item + "/absent", Map.of("reason", "not on this site"));
        }
        assertThat(page("").selectFirst("h1").text()).isEqualTo("Enough to draw");
        assertThat(page("/photos").selectFirst("h1").text()).isEqualTo("All photos are there");
        post(branch.projectManager(), "/photos/2/needed", Map.of());
        assertThat(page("/photos").selectFirst("h1").text()).isEqualTo("1 photo is missing");
    }

    @Test
    void aPartIsKeptAndReadBackAndTheJournalSaysSo() {
        assertThat(save("service", 0, SurveyFixture.Readings.service())).hasStatus3xxRedirection();
        Document page = page("/service");
        assertThat(page.getElementById("v_BN").val()).isEqualTo("120.9");
        assertThat(page.select("#type option[selected]").attr("value")).isEqualTo("SINGLE_PHASE_120_240");
        SurveyFacts facts = world.as(branch.designer(), () -> service.facts(project));
        assertThat(facts.service().mainA()).isEqualTo(200);
        JournalLine line =
                world.as(branch.manager(), () -> journal.newest(project, 1)).get(0);
        assertThat(line.sentence()).startsWith("Survey, service: Service type 120/240 V, single phase");
        assertThat(line.facts()).containsEntry("main_a.to", "200").doesNotContainKey("meter_number.to");
    }

    @Test
    void aReadingOutsideItsLimitsIsKeptAndThePageAsks() {
        Map<String, String> typed = new HashMap<>(SurveyFixture.Readings.service());
        typed.put("v_BN", "131.0");
        MvcTestResult kept = save("service", 0, typed);
        assertThat(kept).hasRedirectedUrl("/projects/" + project + "/survey/service");
        Document page = page("/service");
        assertThat(page.getElementById("v_BN").val()).isEqualTo("131.0");
        assertThat(page.select(".field.ask .asked").text())
                .contains("Leg B to neutral: 131.0 V is outside 110 to 127 V");
        typed.put("v_BN.twice", "YES");
        typed.put("v_BN.why", "utility says it is their tap");
        assertThat(save("service", 1, typed)).hasRedirectedUrl("/projects/" + project + "/survey/roof");
        assertThat(page("/service").select(".field.ask")).isEmpty();
    }

    @Test
    void whatIsNoValueIsRefusedAndEverythingTypedIsStillThere() {
        MvcTestResult refused = save("service", 0, Map.of("main_a", "lots", "bus_a", "225", "grounding", "two <rods>"));
        assertThat(refused).hasStatus(422);
        Document page = TestPages.read(refused);
        assertThat(page.title()).startsWith("Error: ");
        assertThat(page.getElementById("main_a").val()).isEqualTo("lots");
        assertThat(page.getElementById("bus_a").val()).isEqualTo("225");
        assertThat(page.getElementById("grounding").val()).isEqualTo("two <rods>");
        assertThat(page.select("[role=alert] a[href=#main_a]").text()).contains("“lots” is no reading");
        assertThat(world.as(branch.designer(), () -> service.facts(project)).isRecorded())
                .isFalse();
    }

    @Test
    void whoWasSlowerSeesTheirsBesideYours() {
        save("access", 0, Map.of("lane", "gravel", "overhead", "none"));
        MvcTestResult slower = save("access", 0, Map.of("lane", "mud", "overhead", "none"));
        assertThat(slower).hasStatus(409);
        Document page = TestPages.read(slower);
        assertThat(page.select("fieldset legend").eachText()).containsExactly("Lane");
        assertThat(page.select("fieldset").text()).contains("gravel").contains("mud");
        String version = page.selectFirst("input[name=version]").val();
        assertThat(save("access", Long.parseLong(version), Map.of("lane", "mud", "overhead", "none")))
                .hasStatus3xxRedirection();
        assertThat(world.as(branch.designer(), () -> service.facts(project))
                        .access()
                        .lane())
                .isEqualTo("mud");
    }

    @Test
    void aDesignerAsksForAReadingAgainUntilItIsSettled() {
        assertThat(post(branch.designer(), "/service/remark", Map.of("remark", "Read leg B again.")))
                .hasStatus3xxRedirection();
        Document overview = page("");
        assertThat(overview.text()).contains("Read leg B again.");
        String settle = overview.select("form[action$=/settled]").attr("action");
        assertThat(pages.post(branch.projectManager(), settle)).hasRedirectedUrl("/projects/" + project + "/survey");
        assertThat(page("").text()).doesNotContain("Read leg B again.");
        assertThat(post(branch.designer(), "/service/remark", Map.of("remark", " ")))
                .hasStatus(422);
    }

    @Test
    void theGateTakesTheSurveysOwnReadings() {
        assertThat(items()).containsEntry("surveyed.19", ItemState.CANNOT_TELL);
        surveys.home(branch, project);
        Map<String, ItemState> items = items();
        assertThat(items)
                .containsEntry("surveyed.1", ItemState.DONE)
                .containsEntry("surveyed.4", ItemState.DONE)
                .containsEntry("surveyed.9", ItemState.DONE)
                .containsEntry("surveyed.15", ItemState.DONE)
                .containsEntry("surveyed.19", ItemState.BROKEN);
        assertThat(items.get("surveyed.2")).isNotIn(ItemState.DONE, ItemState.CANNOT_TELL);
        Map<String, String> typed = new HashMap<>(SurveyFixture.Readings.service());
        typed.put("v_BN", "131");
        save("service", 1, typed);
        assertThat(items()).containsEntry("surveyed.1", ItemState.BROKEN);
    }

    private Map<String, ItemState> items() {
        Map<String, ItemState> states = new HashMap<>();
        world.as(branch.manager(), () -> gates.viewUnchecked(project, Stage.SURVEYED))
                .items()
                .forEach(item -> states.put(item.asked().code(), item.state()));
        return states;
    }

    @Test
    void aReadingSaysWithWhichInstrumentAndWhenItWasTaken() {
        Map<String, String> typed = new HashMap<>(SurveyFixture.Readings.service());
        typed.putAll(Map.of("volts_with", "multimeter, category IV, May 2026", "volts_at", "Mar 1, 10:20 am, running"));
        save("service", 0, typed);
        assertThat(page("/service").getElementById("volts_at").val()).isEqualTo("Mar 1, 10:20 am, running");
        save("shade", 0, Map.of("h_60", "12", "horizon_with", "clinometer"));
        assertThat(page("/shade").getElementById("horizon_with").val()).isEqualTo("clinometer");
    }

    @Test
    void theLastChangeIsTakenBackForADay() {
        save("access", 0, Map.of("lane", "gravel", "overhead", "none"));
        clock.pass(java.time.Duration.ofMinutes(1));
        save("access", 1, Map.of("lane", "mud", "overhead", "none"));
        String undo = page("/access").select("form[action*=/undo]").attr("action");
        MvcTestResult lines = pages.get(branch.manager(), "/projects/" + project + "/journal");
        assertThat(TestPages.read(lines).select("form[action*=/undo]").eachAttr("action"))
                .containsOnlyOnce(undo);
        assertThat(post(branch.projectManager(), undo.replaceAll(".*/survey", ""), Map.of()))
                .hasRedirectedUrl("/projects/" + project + "/survey/access");
        assertThat(page("/access").getElementById("lane").val()).isEqualTo("gravel");
        assertThat(post(branch.projectManager(), undo.replaceAll(".*/survey", ""), Map.of()))
                .hasStatus(409);
        clock.pass(java.time.Duration.ofHours(25));
        assertThat(page("/access").select("form[action*=/undo]")).isEmpty();
        assertThat(post(branch.projectManager(), "/access/undo", Map.of("version", "3")))
                .hasStatus3xxRedirection();
        assertThat(page("/access").getElementById("lane").val()).isEqualTo("gravel");
    }

    @Test
    void anotherBranchFindsNothing() {
        assertThat(get(world.branch().manager(), "/service")).hasStatus(404);
        assertThat(get(branch.projectManager(), "/cellar")).hasStatus(404);
    }

    @Test
    void photosAreKeptByItem() {
        MockMultipartFile photo = new MockMultipartFile("photo", "meter.jpg", "image/jpeg", MadeUpPhoto.plain());
        MvcTestResult kept = mvc.post()
                .uri("/projects/" + project + "/survey/photos/2")
                .multipart()
                .file(photo)
                .with(world.signedIn(branch.projectManager()))
                .with(csrf())
                .exchange();
        assertThat(kept).hasStatus3xxRedirection();
        Document page = page("/photos");
        assertThat(page.select("img.thumb-pic")).hasSize(1);
        assertThat(page.selectFirst("h1").text()).isEqualTo("17 photos are missing");
        MvcTestResult without = post(branch.projectManager(), "/photos/3", Map.of());
        assertThat(without).hasStatus(422);
        assertThat(TestPages.read(without).text()).contains("Take or choose a photo first.");
        MvcTestResult silent = post(branch.projectManager(), "/photos/3/absent", Map.of("reason", ""));
        assertThat(silent).hasStatus(422);
    }

    @Test
    void pagesTakeAFixedNumberOfQueries() {
        page("");
        int empty = Queries.count(() -> page(""));
        surveys.home(branch, project);
        surveys.home(branch, projects.aHomeRoof().in(branch).build());
        for (int item = 1; item <= 12; item++) {
            post(branch.projectManager(), "/photos/" + item + "/absent", Map.of("reason", "not here"));
        }
        assertThat(Queries.count(() -> page(""))).isEqualTo(empty).isLessThanOrEqualTo(16);
        assertThat(Queries.count(() -> page("/service"))).isLessThanOrEqualTo(16);
        assertThat(Queries.count(() -> page("/photos"))).isLessThanOrEqualTo(22);
    }
}
