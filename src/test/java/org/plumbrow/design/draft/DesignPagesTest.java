package org.plumbrow.design.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.check.DesignChecks;
import org.plumbrow.design.drawing.Drawings;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Part;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.survey.SurveyBook;
import org.plumbrow.web.EditedMeanwhile;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** A designer draws, is told what does not pass, freezes, and sees what a change makes stale. */
@PlumbrowTest
class DesignPagesTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    DesignFixture fixture;

    @Autowired
    MockMvcTester mvc;

    @Autowired
    DesignEditing editing;

    @Autowired
    Designs designs;

    @Autowired
    Revisions revisions;

    @Autowired
    Gates gates;

    @Autowired
    SurveyBook surveys;

    private TestBranch branch;
    private UUID project;

    @BeforeEach
    void aProject() {
        branch = world.branch();
        project = projects.aDairyGroundMount().in(branch).reached(Stage.SIGNED).build();
    }

    private MvcTestResult get(String suffix) {
        return pages.get(branch.designer(), "/projects/" + project + suffix);
    }

    private MvcTestResult post(String suffix, Map<String, String> fields) {
        return pages.post(branch.designer(), "/projects/" + project + suffix, fields);
    }

    @Test
    void beginningFillsInWhatTheContractSays() {
        assertThat(get("/design")).hasStatusOk().bodyText().contains("Nobody has asked for a design");
        assertThat(post("/design", Map.of("wantedOn", ""))).hasStatus(302);
        assertThat(get("/design")).hasStatusOk().bodyText().contains("modules");
        Designs.Draft draft = world.as(branch.designer(), () -> designs.draft(project));
        assertThat(draft.isBegun()).isTrue();
        assertThat(draft.parts().one(Part.CONNECTION).text("kind")).isNotEmpty();
    }

    @Test
    void beforeItIsBegunEveryPageLeadsToItsBeginning() {
        for (String page : List.of(
                "/part/strings", "/part/strings/proposal", "/checks", "/try", "/drawings/one-line", "/packet.pdf")) {
            assertThat(get("/design" + page)).as(page).hasStatus(302);
        }
    }

    @Test
    void aDayThatIsNoneIsSaidAtItsField() {
        assertThat(post("/design", Map.of("wantedOn", "soon")))
                .hasStatus(422)
                .bodyText()
                .contains("Write the day as a date")
                .contains("value=\"soon\"");
    }

    @Test
    void everyProposalOfAGroundMountPasses() {
        Designs.Draft draft = fixture.drawn(branch, project, DesignFixture.groundMount());
        var groups = DesignChecks.of(draft.facts());
        assertThat(draft.facts().modules()).isEqualTo(180);
        assertThat(draft.facts().strings()).hasSize(10).allMatch(string -> string.modules() == 18);
        assertThat(groups.stream()
                        .flatMap(group -> group.checks().stream())
                        .filter(check -> check.verdict() == Verdict.FAIL)
                        .map(check -> check.sentence() + " " + check.remedy()))
                .isEmpty();
        assertThat(get("/design/checks"))
                .hasStatusOk()
                .bodyText()
                .contains("No check fails")
                .contains("fuses of the strings: none, and none are needed")
                .doesNotContain("1 strings")
                .contains("NEC 2020 690.7");
        assertThat(get("/design/quantities"))
                .hasStatusOk()
                .bodyText()
                .contains("180 modules")
                .contains("3 inverters")
                .contains("1 piece<")
                .contains("5 to 90 working days")
                .doesNotContain("1 pieces");
        assertThat(get("/design/quantities.csv"))
                .hasStatusOk()
                .bodyText()
                .contains("group,what,amount,unit,lead_time_working_days")
                .contains("180,modules,5 to 60");
        assertThat(get("/design/drawings/quantities")).hasStatus(200);
    }

    @Test
    void aProposalTakesLengthsFromTheSurveyAndSaysWhichAreOnlyUsual() {
        Designs.Draft usual = fixture.drawn(branch, project, DesignFixture.groundMount());
        assertThat(usual.kept(Part.RUNS).rows())
                .extracting(row -> row.text("lengthFt"), row -> row.text("lengthFrom"))
                .startsWith(org.assertj.core.groups.Tuple.tuple("100", "usual, not measured"))
                .endsWith(org.assertj.core.groups.Tuple.tuple("200", "usual, not measured"));
        assertThat(usual.kept(Part.DEVICES).rows()).allMatch(row -> row.isEmpty("toMeterFt"));
        world.as(branch.projectManager(), () -> {
            surveys.fill(
                    project,
                    "service",
                    Map.of("array_to_inverter_ft", "41", "inverter_to_poi_ft", "345", "disconnect_to_meter_ft", "7"));
            surveys.fill(
                    project,
                    "routes",
                    Map.of(
                            "route.1.kind", "TRENCH",
                            "route.1.length_ft", "330",
                            "route.1.cover_in", "30",
                            "route.1.crosses", "farm lane"));
        });
        assertThat(get("/design/part/runs/proposal"))
                .hasStatusOk()
                .bodyText()
                .contains("value=\"345\"")
                .contains("value=\"41\"")
                .contains("value=\"30\"")
                .contains("value=\"farm lane\"")
                .contains("value=\"as surveyed\"")
                .contains("value=\"usual, not measured\"");
        assertThat(get("/design/part/devices/proposal"))
                .hasStatusOk()
                .bodyText()
                .contains("value=\"7\"");
    }

    @Test
    void whatDoesNotPassStandsOnTopTheWorstFirstAndTheRestIsFolded() throws Exception {
        fixture.drawn(branch, project, DesignFixture.groundMount());
        var longer = List.of(Cells.of(
                "mark", "1.1.1", "array", "A1", "inverter", "INV 1", "input", 1, "modules", 20, "firstModule", 1));
        world.as(branch.designer(), () -> editing.keep(project, Part.STRINGS, 0, longer));
        Document page = Jsoup.parse(get("/design/checks").getResponse().getContentAsString());
        assertThat(page.select("main h2").eachText()).containsExactly("Look at these first", "What passes");
        var first = page.select("section[aria-labelledby=first] > ul > li");
        assertThat(first.first().text()).startsWith("Fails.").contains("Change it under “Strings”");
        assertThat(first.select("summary").eachText()).noneMatch(line -> line.startsWith("Passes."));
        assertThat(page.select("section[aria-labelledby=passing] > details"))
                .isNotEmpty()
                .noneMatch(group -> group.hasAttr("open"));
        assertThat(page.select("section[aria-labelledby=passing] > details > summary")
                        .first()
                        .text())
                .startsWith("Strings and inputs: ");
    }

    /** 208 V over 700 ft: no single conductor keeps two percent, two or more do, each of at least 1/0 and in its conduit. */
    @Test
    void aLongWayAtLowVoltageIsProposedInSets() {
        world.as(branch.projectManager(), () -> surveys.fill(project, "service", Map.of("inverter_to_poi_ft", "700")));
        Designs.Draft draft = fixture.drawn(branch, project, DesignFixture.groundMountOfLowVoltage());
        var last = draft.facts().runs().get(4);
        assertThat(last.sets()).isBetween(2, 6);
        assertThat(last.racewaySize()).isNotNull();
        assertThat(DesignChecks.of(draft.facts()).stream()
                        .filter(group -> group.part() == Part.RUNS)
                        .flatMap(group -> group.checks().stream())
                        .filter(check -> check.verdict() != Verdict.PASS)
                        .map(check -> check.sentence() + " " + check.remedy()))
                .isEmpty();
        assertThat(Drawings.sheets(draft.facts()))
                .as("the schedule of conductors")
                .anyMatch(sheet -> sheet.svg().contains(last.sets() + " sets of 3"));
    }

    @Test
    void aRowIsToldInWords() throws Exception {
        fixture.drawn(branch, project, DesignFixture.groundMount());
        Document page = Jsoup.parse(get("/design/part/runs").getResponse().getContentAsString());
        assertThat(page.select("details.array summary").first().text())
                .startsWith("R1 direct current of one string, 1.1.1, INV 1, 100 ft, usual, not measured,");
    }

    @Test
    void setsAreWholeNumbersOfAtLeastOne() {
        fixture.drawn(branch, project, DesignFixture.groundMount());
        for (String typed : List.of("0", "13", "1.5", "two", "-1")) {
            assertThat(post(
                            "/design/part/runs",
                            Map.of("sent[version]", "0", "rows[0].cells[mark]", "R1", "rows[0].cells[sets]", typed)))
                    .as(typed)
                    .hasStatus(422)
                    .bodyText()
                    .contains("Write the sets side by side as a whole number from 1 to 12.");
        }
    }

    /** Runs one after the other share the limit of the voltage rise; at 208 V each alone may take all of it. */
    @Test
    void aProposalAtLowVoltageKeepsTheWholeWayWithinTheLimit() {
        Designs.Draft draft = fixture.drawn(branch, project, DesignFixture.groundMountOfLowVoltage());
        assertThat(DesignChecks.of(draft.facts()).stream()
                        .flatMap(group -> group.checks().stream())
                        .filter(check -> check.subject().contains("voltage rise")
                                || check.subject().contains("voltage drop"))
                        .filter(check -> check.verdict() != Verdict.PASS)
                        .map(check -> check.sentence() + " " + check.remedy()))
                .isEmpty();
        assertThat(draft.facts().runs()).hasSize(5);
    }

    @Test
    void aWordInAFigureIsStillThereAndTheMessageIsAtTheField() {
        fixture.drawn(branch, project, DesignFixture.groundMount());
        assertThat(post(
                        "/design/part/site",
                        Map.of(
                                "sent[version]", "0",
                                "rows[0].cells[mainA]", "four hundred",
                                "rows[0].cells[meterNumber]", "700411",
                                "rows[0].cells[service]", "WYE_480_277")))
                .hasStatus(422)
                .bodyText()
                .contains("value=\"four hundred\"")
                .contains("value=\"700411\"")
                .contains("Write the main device as a number from 15 to 6,000 A");
    }

    @Test
    void twoDesignersAtOnePartSeeEachOthersAndAtTwoPartsNeverMeet() {
        fixture.drawn(branch, project, DesignFixture.groundMount());
        Map<String, String> mine =
                Map.of("sent[version]", "0", "rows[0].cells[mainA]", "350", "rows[0].cells[service]", "WYE_480_277");
        assertThat(post("/design/part/site", mine)).hasStatus(302);
        assertThat(post("/design/part/racking", Map.of("sent[version]", "-1", "rows[0].cells[posts]", "60")))
                .hasStatus(302);
        assertThat(post(
                        "/design/part/site",
                        Map.of(
                                "sent[version]",
                                "0",
                                "rows[0].cells[mainA]",
                                "300",
                                "rows[0].cells[service]",
                                "WYE_480_277")))
                .hasStatus(409)
                .bodyText()
                .contains("350")
                .contains("300");
    }

    @Test
    void aRowIsTakenOutAndAMarkStandsOnce() {
        fixture.drawn(branch, project, DesignFixture.groundMount());
        assertThat(post(
                        "/design/part/labels",
                        Map.of(
                                "sent[version]", "0",
                                "rows[0].cells[place]", "main panel",
                                "rows[0].cells[text]", "one",
                                "rows[1].cells[place]", "meter",
                                "rows[1].cells[text]", "two",
                                "rows[1].cells[out]", "yes")))
                .hasStatus(302);
        Designs.Draft draft = world.as(branch.designer(), () -> designs.draft(project));
        assertThat(draft.kept(Part.LABELS).rows()).hasSize(1);
        var twice = List.of(
                Cells.of("mark", "INV 1", "type", "Inverter 25 kW, 480 V"),
                Cells.of("mark", "INV 1", "type", "Inverter 25 kW, 480 V"));
        assertThat(world.as(branch.designer(), () -> editing.keep(project, Part.INVERTERS, 0, twice)))
                .hasValueSatisfying(no -> assertThat(no.sentence()).contains("stands twice"));
    }

    @Test
    void anotherInverterIsTriedWithoutChangingAnything() {
        Designs.Draft draft = fixture.drawn(branch, project, DesignFixture.groundMount());
        assertThat(get("/design/try?module=Module 550 W&inverter=Inverter 7.6 kW, 240 V"))
                .hasStatusOk()
                .bodyText()
                .contains("As drawn")
                .contains("gives 240 V");
        assertThat(world.as(branch.designer(), () -> designs.draft(project))
                        .facts()
                        .version())
                .isEqualTo(draft.facts().version());
    }

    @Test
    void aFrozenRevisionStaysAndTheNextSaysWhatChanged() {
        Designs.Draft draft = fixture.drawn(branch, project, DesignFixture.groundMount());
        long seen = draft.facts().version();
        assertThat(post("/design/revisions", Map.of("seen", Long.toString(seen), "why", "first issue")))
                .hasStatus(302);
        world.as(
                branch.designer(),
                () -> editing.keep(project, Part.RACKING, -1, List.of(Cells.of("posts", 72, "embedmentIn", 60))));
        assertThat(world.as(branch.designer(), () -> designs.frozen(project, "A"))
                        .orElseThrow()
                        .racking())
                .isNull();
        assertThat(get("/design/revisions"))
                .hasStatusOk()
                .bodyText()
                .contains("1 change since")
                .contains("Racking");
        assertThat(post("/design/revisions", Map.of("seen", Long.toString(seen), "why", "posts by the letter")))
                .hasStatus(409)
                .bodyText()
                .contains("Somebody has changed the design since you opened this page")
                .contains("posts by the letter")
                .contains("name=\"seen\" value=\"" + (seen + 1) + "\"");
        assertThat(post("/design/revisions", Map.of("seen", "the last one", "why", "x".repeat(301))))
                .hasStatus(422)
                .bodyText()
                .contains("at most 300 characters")
                .contains("x".repeat(301));
        assertThat(post("/design/revisions", Map.of("seen", "the last one", "why", "")))
                .hasStatus(409);
        assertThat(post("/design/revisions", Map.of("seen", Long.toString(seen + 1), "why", "posts")))
                .hasStatus(302);
        assertThat(get("/design/revisions")).hasStatusOk().bodyText().contains("Revision B");
    }

    @Test
    void nothingNewIsNoRevision() {
        Designs.Draft draft = fixture.drawn(branch, project, DesignFixture.groundMount());
        String seen = Long.toString(draft.facts().version());
        post("/design/revisions", Map.of("seen", seen, "why", ""));
        assertThat(post("/design/revisions", Map.of("seen", seen, "why", "")))
                .hasStatus(422)
                .bodyText()
                .contains("Nothing has changed since revision A");
    }

    @Test
    void theGateIsJudgedFromTheDesign() {
        assertThat(finding("designed.1")).isInstanceOf(Finding.CannotTell.class);
        fixture.drawn(branch, project, DesignFixture.groundMount());
        assertThat(finding("designed.1")).isInstanceOf(Finding.Satisfied.class);
        assertThat(finding("designed.9")).isInstanceOf(Finding.CannotTell.class);
        var longer = List.of(Cells.of(
                "mark", "1.1.1", "array", "A1", "inverter", "INV 1", "input", 1, "modules", 20, "firstModule", 1));
        world.as(branch.designer(), () -> editing.keep(project, Part.STRINGS, 0, longer));
        assertThat(finding("designed.1"))
                .isInstanceOfSatisfying(
                        Finding.Broken.class,
                        broken -> assertThat(broken.remedy())
                                .isEqualTo("At most 19 modules in series here; 20 are drawn."));
    }

    private Finding finding(String item) {
        return world.as(
                branch.designer(),
                () -> gates.viewUnchecked(project, Stage.DESIGNED).items().stream()
                        .filter(one -> one.code().equals(item))
                        .findFirst()
                        .orElseThrow()
                        .finding());
    }

    @Test
    void theListOfDesignsAndThePageTakeFewQueries() {
        fixture.drawn(branch, project, DesignFixture.groundMount());
        assertThat(Queries.count(() -> assertThat(mvc.get()
                                .uri("/designs")
                                .with(world.signedIn(branch.designer()))
                                .exchange())
                        .hasStatusOk()))
                .isLessThanOrEqualTo(6);
        assertThat(Queries.count(() -> assertThat(get("/design")).hasStatusOk()))
                .isLessThanOrEqualTo(24);
    }

    @Test
    void anEntryOfTheCatalogueIsAddedByFormAndByTable() {
        UUID id = fixture.module(branch, "Module 430 W");
        assertThat(mvc.get()
                        .uri("/design-equipment/" + id)
                        .with(world.signedIn(branch.designer()))
                        .exchange())
                .hasStatusOk()
                .bodyText()
                .contains("Module 430 W");
        assertThat(mvc.get()
                        .uri("/design-equipment")
                        .with(world.signedIn(branch.designer()))
                        .exchange())
                .hasStatusOk()
                .bodyText()
                .contains("Module 430 W")
                .contains("generic");
        var table = "name,powerW,vocV\nModule 440 W,440,39\n".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        assertThat(mvc.post()
                        .uri("/design-equipment/modules/file")
                        .multipart()
                        .file(new org.springframework.mock.web.MockMultipartFile("file", "m.csv", "text/csv", table))
                        .with(csrf())
                        .with(world.signedIn(branch.designer()))
                        .exchange())
                .hasStatusOk()
                .bodyText()
                .contains("No row came in")
                .contains("Line 2: Write the voltage at most power");
    }

    @Test
    void eachSheetIsAPictureMadeFromTheData() {
        fixture.drawn(branch, project, DesignFixture.groundMount());
        assertThat(get("/design/drawings")).hasStatusOk().bodyText().contains("/design/drawings/one-line");
        MvcTestResult sheet = get("/design/drawings/one-line");
        assertThat(sheet).hasStatusOk().hasContentTypeCompatibleWith("image/svg+xml");
        assertThat(sheet).bodyText().contains("<svg").contains("INV 3");
        var fewer = designs(Part.INVERTERS).subList(0, 2);
        world.as(branch.designer(), () -> editing.keep(project, Part.INVERTERS, 0, fewer));
        assertThat(get("/design/drawings/one-line")).bodyText().contains("2 inverters (INV 1, INV 2)");
    }

    @Test
    void aFormThatNobodyWasGivenIsNotUnderstood() {
        fixture.drawn(branch, project, DesignFixture.groundMount());
        for (String forged : List.of("rows[x].cells[mark]", "rows[99999].cells[mark]", "rows[-1].cells[mark]")) {
            assertThat(post("/design/part/strings", Map.of("sent[version]", "0", forged, "1")))
                    .as(forged)
                    .hasStatus(400)
                    .bodyText()
                    .contains("not understood");
        }
        for (String odd : List.of("rows[0]")) {
            assertThat(post("/design/part/strings", Map.of("sent[version]", "0", odd, "1")))
                    .as(odd)
                    .hasStatus(422);
        }
    }

    @Test
    void placesAreWrittenInFeetFromTheMeterAndStandOnTheSitePlan() {
        fixture.drawn(branch, project, DesignFixture.groundMount());
        var typed = Map.of(
                "sent[version]", "-1",
                "rows[0].cells[kind]", "THING",
                "rows[0].cells[mark]", "A1",
                "rows[0].cells[points]", "north of the barn");
        assertThat(post("/design/part/plan", typed))
                .hasStatus(422)
                .bodyText()
                .contains("feet east and feet north of the meter with a space between", "north of the barn");
        Map<String, String> right = new java.util.HashMap<>(typed);
        right.put("rows[0].cells[points]", "-150 -260.5");
        assertThat(post("/design/part/plan", right)).hasStatus(302);
        assertThat(get("/design/drawings/site-plan")).hasStatusOk().bodyText().contains("−260.5", "as written");
    }

    @Test
    void thePacketIsAPdfOfTheDraftOrOfARevision() throws Exception {
        fixture.drawn(branch, project, DesignFixture.groundMount());
        assertThat(words(get("/design/packet.pdf"))).contains("DRAFT, not frozen", "75.0 kW AC", "INV 3");
        long seen = world.as(branch.designer(), () -> designs.draft(project))
                .facts()
                .version();
        world.as(branch.designer(), () -> revisions.freeze(project, seen, ""));
        var fewer = designs(Part.INVERTERS).subList(0, 2);
        world.as(branch.designer(), () -> editing.keep(project, Part.INVERTERS, 0, fewer));
        assertThat(words(get("/design/packet.pdf"))).contains("DRAFT", "50.0 kW AC");
        assertThat(words(get("/design/packet.pdf?revision=A"))).contains("Revision A", "75.0 kW AC");
        assertThat(get("/design/packet.pdf?revision=B")).hasStatus(404);
    }

    private static String words(MvcTestResult answer) throws Exception {
        assertThat(answer).hasStatusOk().hasContentType("application/pdf");
        try (var document =
                org.apache.pdfbox.Loader.loadPDF(answer.getResponse().getContentAsByteArray())) {
            return new org.apache.pdfbox.text.PDFTextStripper().getText(document);
        }
    }

    private List<Cells> designs(Part part) {
        return world.as(branch.designer(), () -> designs.draft(project))
                .kept(part)
                .rows();
    }

    @Test
    void whoeverWasSlowerIsTold() {
        fixture.drawn(branch, project, DesignFixture.groundMount());
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> world.as(
                        branch.designer(), () -> editing.keep(project, Part.SITE, 7, List.of(Cells.of("mainA", 1)))))
                .isInstanceOf(EditedMeanwhile.class);
    }
}
