package org.plumbrow.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
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
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The pages of crews and shared machines: who sees which, what is refused and how. */
@PlumbrowTest
class CrewPagesTest {

    private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    CrewSamples samples;

    @Autowired
    Crews crews;

    private TestBranch branch;

    @BeforeEach
    void open() {
        branch = world.branch();
    }

    @Test
    void theListSaysWhoIsAwayTodayAndWhoNext() {
        samples.away(branch, samples.crew(branch, "Crew 1", null), MONDAY, MONDAY.plusDays(4));
        samples.away(branch, samples.crew(branch, "Crew 2", null), MONDAY.plusDays(7), MONDAY.plusDays(7));
        samples.away(branch, samples.crew(branch, "Crew 3", null), MONDAY.minusDays(7), MONDAY.minusDays(3));
        Document page = get("/crews", branch.manager());
        assertThat(page.select("h1").text()).isEqualTo("3 crews: one is away today");
        assertThat(page.select("tbody tr").eachText())
                .satisfiesExactly(
                        first ->
                                assertThat(first).contains("Away today").contains("Mon, Mar 1 to Fri, Mar 5, training"),
                        second ->
                                assertThat(second).doesNotContain("Away today").contains("Mon, Mar 8, training"),
                        third -> assertThat(third).doesNotContain("training"));
    }

    @Test
    void theListTakesAsManyQueriesWithTwentyCrewsAsWithOne() {
        samples.crew(branch, "Crew", branch.crewLead().personId());
        samples.machine(branch, EquipmentKind.LIFT, "Lift");
        int crewQueries = Queries.count(() -> get("/crews", branch.manager()));
        int machineQueries = Queries.count(() -> get("/crews/equipment", branch.manager()));
        for (int i = 0; i < 20; i++) {
            samples.away(
                    branch, samples.crew(branch, "Crew " + i, branch.crewLead().personId()), MONDAY, MONDAY);
            samples.machine(branch, EquipmentKind.LIFT, "Lift " + i);
        }
        // one for who asks, three for the crews, two for the machines
        assertThat(crewQueries).isEqualTo(4);
        assertThat(machineQueries).isEqualTo(3);
        assertThat(Queries.count(() -> get("/crews", branch.manager()))).isEqualTo(crewQueries);
        assertThat(Queries.count(() -> get("/crews/equipment", branch.manager())))
                .isEqualTo(machineQueries);
    }

    @Test
    void aCrewLeadSeesAndOpensTheOwnCrewOnlyAndChangesNothing() {
        UUID own = samples.crew(branch, "Crew 1", branch.crewLead().personId());
        UUID other = samples.crew(branch, "Crew 2", null);
        Document list = get("/crews", branch.crewLead());
        assertThat(list.select("tbody tr th").eachText()).containsExactly("Crew 1");
        assertThat(list.select("a[href=/crews/new]")).isEmpty();
        Document page = get("/crews/" + own, branch.crewLead());
        assertThat(page.select("main form")).isEmpty();
        MvcTestResult refused = mvc.get()
                .uri("/crews/" + other)
                .with(world.signedIn(branch.crewLead()))
                .exchange();
        assertThat(refused).hasStatus(403);
        assertThat(TestPages.read(refused).text())
                .contains("Managers, project managers and the crew's own lead may do this.");
    }

    @Test
    void aCrewIsAddedAndAnAbsenceEnteredAndTakenBack() {
        MvcTestResult added = post(
                "/crews/new",
                Map.of(
                        "name",
                        "Crew 4",
                        "size",
                        "2 people",
                        "skills",
                        "ELECTRICIAN,SERVICE",
                        "leadPersonId",
                        branch.crewLead().personId().toString(),
                        "from",
                        "2027-03-01",
                        "until",
                        ""));
        assertThat(added).hasStatus(302);
        String address = added.getResponse().getHeader("Location");
        assertThat(post(address + "/away", away("2027-03-01", "2027-03-02", "ILLNESS")))
                .hasStatus(302);
        Document page = get(address, branch.manager());
        assertThat(page.select("h1").text()).isEqualTo("Crew 4 is away (illness) until Tue, Mar 2");
        assertThat(page.text()).contains("licensed electrician, qualified for energised testing at the service");
        String remove = page.select("form[action$=remove]").attr("action");
        assertThat(post(remove, Map.of())).hasStatus(302);
        assertThat(get(address, branch.manager()).select("h1").text()).isEqualTo("Crew 4 is there today");
    }

    @Test
    void anOverlappingAbsenceIsRefusedInWordsAtItsDayAndNothingTypedIsLost() {
        UUID crew = samples.crew(branch, "Crew 1", null);
        samples.away(branch, crew, MONDAY, MONDAY.plusDays(4));
        MvcTestResult refused = post("/crews/" + crew + "/away", away("2027-03-05", "2027-03-09", "HOLIDAY"));
        assertThat(refused).hasStatus(422);
        Document page = TestPages.read(refused);
        assertThat(page.getElementById("firstDay-wrong").text())
                .isEqualTo("The crew is already away in a part of this time. Choose other days, or remove the other"
                        + " absence first.");
        assertThat(page.getElementById("firstDay").val()).isEqualTo("2027-03-05");
        assertThat(page.getElementById("lastDay").val()).isEqualTo("2027-03-09");
        assertThat(page.select("input[name=reason][checked]").val()).isEqualTo("HOLIDAY");
    }

    @Test
    void wordsForPeopleAreKeptWithTheMessageAtTheirField() {
        MvcTestResult refused =
                post("/crews/new", Map.of("name", "Crew 4", "size", "a few", "from", "2027-03-01", "skills", "ROOF"));
        assertThat(refused).hasStatus(422);
        Document page = TestPages.read(refused);
        assertThat(page.getElementById("size").val()).isEqualTo("a few");
        assertThat(page.getElementById("size-wrong").text())
                .isEqualTo("Write the people as a whole number from 1 to 20.");
        assertThat(page.getElementById("from").val()).isEqualTo("2027-03-01");
        assertThat(page.select("input[name=skills][checked]").eachAttr("value")).containsExactly("ROOF");
        assertThat(post("/crews/new", Map.of("name", "", "size", "21", "from", "2027-03-01")))
                .hasStatus(422);
    }

    @Test
    void qualifiedPeopleAreAtMostThePeopleOfTheCrew() {
        Map<String, String> form =
                new HashMap<>(Map.of("name", "Crew 4", "size", "2", "from", "2027-03-01", "skills", "ELECTRICIAN"));
        form.put("electricalPeople", "3");
        MvcTestResult refused = post("/crews/new", form);
        assertThat(refused).hasStatus(422);
        assertThat(TestPages.read(refused)
                        .getElementById("electricalPeople-wrong")
                        .text())
                .isEqualTo("The crew has 2 people. Write at most so many, or change the people.");
        form.put("electricalPeople", "-1");
        assertThat(post("/crews/new", form)).hasStatus(422);
        form.put("electricalPeople", "2");
        MvcTestResult added = post("/crews/new", form);
        assertThat(added).hasStatus(302);
        assertThat(get(added.getResponse().getHeader("Location"), branch.manager())
                        .text())
                .contains("Qualified for electrical work 2");
    }

    @Test
    void aCrewThatNobodyHasCountedSaysSo() {
        UUID crew = samples.crew(branch, "Crew 1", null);
        assertThat(post(
                        "/crews/" + crew,
                        Map.of(
                                "name",
                                "Crew 1",
                                "size",
                                "5",
                                "electricalPeople",
                                "",
                                "skills",
                                "ROOF",
                                "from",
                                "2027-01-04",
                                "version",
                                "0")))
                .hasStatus(302);
        assertThat(get("/crews/" + crew, branch.manager()).text())
                .contains("Qualified for electrical work nobody has said");
    }

    @Test
    void theirsStandBesideYoursWithSkillsInWords() {
        UUID crew = samples.crew(branch, "Crew 1", null);
        Map<String, String> form =
                Map.of("name", "Crew 1", "size", "5", "skills", "ROOF", "from", "2027-01-04", "version", "0");
        assertThat(post("/crews/" + crew, form)).hasStatus(302);
        MvcTestResult second = post(
                "/crews/" + crew,
                Map.of(
                        "name",
                        "Crew 1",
                        "size",
                        "6",
                        "skills",
                        "ROOF,INSTALLER",
                        "from",
                        "2027-01-04",
                        "version",
                        "0"));
        assertThat(second).hasStatus(409);
        assertThat(TestPages.read(second).text())
                .contains("Theirs: 5")
                .contains("Yours: 6")
                .contains("Yours: array work, roof work with fall protection");
        Document page = TestPages.read(second);
        assertThat(page.select("input[name=skills]").eachAttr("value")).contains("INSTALLER,ROOF");
        assertThat(post(
                        page.select("main form").attr("action"),
                        Map.of(
                                "name",
                                "Crew 1",
                                "size",
                                "6",
                                "skills",
                                "INSTALLER,ROOF",
                                "leadPersonId",
                                "",
                                "from",
                                "2027-01-04",
                                "until",
                                "",
                                "version",
                                page.select("input[name=version]").val())))
                .hasStatus(302);
        assertThat(world.as(branch.manager(), () -> crews.crew(crew))
                        .orElseThrow()
                        .size())
                .isEqualTo(6);
    }

    @Test
    void aMachineThatHasGoneStandsApart() {
        UUID lift = samples.machine(branch, EquipmentKind.LIFT, "Old lift");
        assertThat(post(
                        "/crews/equipment/" + lift,
                        Map.of(
                                "kind",
                                "LIFT",
                                "name",
                                "Old lift",
                                "from",
                                "2027-01-04",
                                "until",
                                "2027-02-26",
                                "version",
                                "0")))
                .hasStatus(302);
        Document page = get("/crews/equipment", branch.projectManager());
        assertThat(page.select("h1").text()).isEqualTo("No shared machine yet");
        assertThat(page.select("section").text()).contains("Old lift").contains("until Fri, Feb 26, 2027");
    }

    @Test
    void everyFormFieldHasItsLabelAndNoIdStandsTwice() {
        UUID crew = samples.crew(branch, "Crew 1", branch.crewLead().personId());
        samples.away(branch, crew, MONDAY, MONDAY);
        UUID lift = samples.machine(branch, EquipmentKind.LIFT, "Lift");
        for (String address : List.of(
                "/crews",
                "/crews/new",
                "/crews/" + crew,
                "/crews/equipment",
                "/crews/equipment/new",
                "/crews/equipment/" + lift)) {
            Document page = get(address, branch.manager());
            assertThat(page.select("h1")).as(address).hasSize(1);
            assertThat(page.select("[id]").eachAttr("id")).as(address).doesNotHaveDuplicates();
            page.select("main input:not([type=hidden]), main select")
                    .forEach(input -> assertThat(
                                    page.select("label[for=" + input.id() + "]").size()
                                            + input.parents().select("label").size())
                            .as(address + " " + input)
                            .isPositive());
        }
    }

    private static Map<String, String> away(String first, String last, String reason) {
        return Map.of(
                "firstDay",
                first,
                "firstHalf",
                "MORNING",
                "lastDay",
                last,
                "lastHalf",
                "AFTERNOON",
                "reason",
                reason,
                "note",
                "");
    }

    private Document get(String address, Visitor visitor) {
        return pages.page(visitor, address);
    }

    private MvcTestResult post(String address, Map<String, String> fields) {
        return pages.post(branch.manager(), address, fields);
    }
}
