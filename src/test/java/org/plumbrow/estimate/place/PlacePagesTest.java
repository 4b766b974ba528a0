package org.plumbrow.estimate.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.estimate.site.EstimateFixture;
import org.plumbrow.project.JournalReader;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.survey.SurveyBook;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

/** Roof and ground beside one another, and the decision with the customer. */
@PlumbrowTest
class PlacePagesTest {

    private static final Map<String, String> FIELD = Map.of(
            "field_length_ft", "320",
            "field_width_ft", "210",
            "slope_ns_percent", "-4",
            "slope_ew_percent", "18",
            "soil", "LOAM",
            "frost_in", "44",
            "probe.1.place", "north",
            "probe.1.depth_ft", "8",
            "probe.1.refused", "NO",
            "probe.2.place", "south");

    private static final Map<String, String> BARN = Map.of(
            "plane.1.name", "Barn, south side",
            "plane.1.covering", "METAL_RIB",
            "plane.1.year", "1998",
            "plane.1.life_years", "12",
            "plane.1.structure", "trusses 8 ft apart",
            "plane.1.pitch_deg", "18",
            "plane.1.azimuth_deg", "180",
            "plane.1.width_ft", "120",
            "plane.1.length_ft", "28",
            "plane.2.name", "Shed");

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    EstimateFixture weather;

    @Autowired
    SurveyBook surveys;

    private TestBranch branch;
    private UUID project;

    @BeforeEach
    void aDairy() {
        branch = world.branch();
        project = projects.aDairyGroundMount().in(branch).build();
    }

    private void read(String part, Map<String, String> typed) {
        world.as(branch.designer(), () -> surveys.fill(project, part, typed));
    }

    private void surveyed() {
        weather.weather(branch, "Valley means");
        read("ground", FIELD);
        read("roof", BARN);
        read(
                "routes",
                Map.of(
                        "route.1.name", "array to barn",
                        "route.1.kind", "TRENCH",
                        "route.1.length_ft", "300",
                        "route.1.crosses", "field lane",
                        "route.2.name", "below the yard",
                        "route.2.kind", "BORE",
                        "route.2.length_ft", "60"));
        Map<String, String> horizon = new LinkedHashMap<>();
        for (int azimuth = 60; azimuth <= 300; azimuth += 15) {
            horizon.put("h_" + azimuth, "8");
        }
        read("shade", horizon);
    }

    private MvcTestResult get(String suffix, Visitor who) {
        return pages.get(who, "/projects/" + project + suffix);
    }

    private Document page(String suffix, Visitor who) {
        return pages.page(who, "/projects/" + project + suffix);
    }

    private Document page() {
        return page("/roof-or-ground", branch.projectManager());
    }

    private static String cell(Document page, String row, int place) {
        Element found = page.select("table.beside tbody tr").stream()
                .filter(line -> line.selectFirst("th").text().equals(row))
                .findFirst()
                .orElseThrow();
        return found.select("td").get(place).text();
    }

    private MvcTestResult decide(String... fields) {
        return pages.post(branch.projectManager(), "/projects/" + project + "/roof-or-ground/decision", fields);
    }

    private MvcTestResult decide(String choice, String version, String reason) {
        return decide(
                "choice",
                choice,
                "decidedBy",
                "Tamsin",
                "decidedWith",
                "Perrin Ash",
                "decidedOn",
                "2027-02-26",
                "reason",
                reason,
                "version",
                version);
    }

    @Test
    void whatNobodyHasReadIsSaidWithTheWayToTheSurvey() {
        Document page = page();
        assertThat(page.select("h1").text()).isEqualTo("Sedge Hollow Dairy: roof or ground is not decided yet");
        assertThat(cell(page, "Size that fits", 0)).isEqualTo("No roof was surveyed. Roof");
        assertThat(cell(page, "Size that fits", 1)).isEqualTo("The field was not measured. Ground");
        assertThat(cell(page, "Way to the meter", 1)).isEqualTo("No trench or bore was walked. Routes");
        assertThat(cell(page, "What carries it", 1)).contains("The soil was not read.", "Fewer than two probe posts");
        assertThat(cell(page, "Typical year", 1)).isEqualTo("Not known yet.");
        assertThat(page.text()).contains("The branch has no weather yet.");
        assertThat(page.select("table.beside a").eachAttr("href"))
                .contains(
                        "/projects/" + project + "/survey/roof",
                        "/projects/" + project + "/survey/ground",
                        "/projects/" + project + "/survey/routes",
                        "/projects/" + project + "/survey/shade");
    }

    @Test
    void bothPlacesStandBesideOneAnotherFromTheSurvey() {
        surveyed();
        Document page = page("/roof-or-ground", branch.designer());
        // 114 ft and 25 ft: upright 30 by 3, lying 15 by 6
        assertThat(cell(page, "Size that fits", 0))
                .startsWith("Holds about 90 modules, 49.5 kW DC. The contract’s 99.0 kW DC need 49.5 kW more.")
                .contains("“Shed” lacks its width, length, pitch or azimuth.", "common practice");
        assertThat(cell(page, "Size that fits", 1)).contains("That is enough for the contract’s 99.0 kW DC.");
        assertThat(cell(page, "Typical year", 0)).startsWith("With all that fits, 49.5 kW DC: ");
        assertThat(cell(page, "Typical year", 1)).startsWith("With the contract’s 99.0 kW DC: ");
        assertThat(cell(page, "Yield of a kilowatt", 1)).matches("1,\\d{3} kWh for each kW DC\\.");
        assertThat(cell(page, "Tilt and azimuth", 0)).startsWith("Barn, south side: tilt 18°, azimuth 180°.");
        assertThat(cell(page, "Tilt and azimuth", 1)).isEqualTo("Tilt 25°, azimuth 180°.");
        assertThat(cell(page, "Shade", 1)).matches("What stands around takes \\d\\.\\d %\\. One horizon was read.*");
        assertThat(cell(page, "Age of the roof", 0))
                .contains("ribbed metal of 1998, 29 years old. Such a covering lasts 30 to 45 years.")
                .contains("The surveyor gives it 12 years more.");
        assertThat(cell(page, "Land taken", 1))
                .matches("About \\d\\.\\d\\d acres for 99\\.0 kW DC, of the 1\\.54 acres.*");
        assertThat(cell(page, "Way to the meter", 1))
                .contains("array to barn: trench, 300 ft; crosses field lane.")
                .contains("below the yard: bore, 60 ft; what it crosses was not read.")
                .contains("Together 300 ft of trench and 60 ft of bore.");
        assertThat(cell(page, "What carries it", 0)).contains("trusses 8 ft apart", "an engineer says in writing");
        assertThat(cell(page, "What carries it", 1)).contains("Soil: loam.", "0 of 2 probes went no deeper.");
        assertThat(cell(page, "To keep in mind", 0))
                .contains("will not last 15 more years", "light trusses", "does not hold the contract’s size");
        assertThat(cell(page, "To keep in mind", 1)).contains("Steeper than 15 %");
        assertThat(page.select("#beside + p").text()).matches("For each kilowatt the ground gives \\d+\\.\\d % more.*");
        assertThat(page.text()).doesNotContain("$");
        assertThat(page.select("a[href$=/decision]")).isEmpty();
    }

    @Test
    void theContractsOwnYieldComesOutForItsOwnField() {
        surveyed();
        Document yield = page("/yield", branch.manager());
        double open = Double.parseDouble(yield.select("section[aria-labelledby=arrays] tbody td")
                .last()
                .text()
                .replace(",", ""));
        double rows = Double.parseDouble(
                cell(page(), "Yield of a kilowatt", 1).replaceAll(" kWh.*", "").replace(",", ""));
        // the same plane, weather and horizon; here with the shade of rows that stand 6 free hours apart
        assertThat(rows).isBetween(0.96 * open, open);
    }

    @Test
    void aDecisionIsWrittenDownShownOnTheProjectAndInTheJournalWithoutTheCustomer(@Autowired JournalReader journal)
            throws Exception {
        Document form = page("/roof-or-ground/decision", branch.projectManager());
        assertThat(form.getElementById("decidedOn").val()).isEqualTo("2027-03-01");
        assertThat(form.getElementById("decidedBy").val())
                .isEqualTo(branch.projectManager().actor().name());
        assertThat(decide("GROUND", "-1", "The roof has 12 years left."))
                .hasRedirectedUrl("/projects/" + project + "/roof-or-ground");
        Document page = page();
        assertThat(page.select("h1").text()).isEqualTo("Sedge Hollow Dairy: decided for the ground");
        assertThat(page.select("#decision ~ dl").text()).contains("Perrin Ash", "Fri, Feb 26, 2027", "12 years left");
        assertThat(page.text()).doesNotContain("The contract mounts its arrays elsewhere");
        assertThat(page("", branch.projectManager())
                        .select("section[aria-labelledby=placement]")
                        .text())
                .contains("Decided for the ground on Fri, Feb 26, by Tamsin.");
        String line = world.as(branch.manager(), () -> journal.newest(project, 1))
                .get(0)
                .sentence();
        assertThat(line)
                .isEqualTo(
                        "Decided with the customer: the array goes on the ground. Reason: The roof has 12 years left.");
    }

    @Test
    void aDecisionAgainstTheContractSaysWhatHasToChangeAndWhere() {
        decide("ROOF", "-1", "The field stays a field.");
        Document page = page();
        assertThat(page.select(".note-risk").text()).contains("The contract mounts its arrays elsewhere");
        assertThat(page.select(".note-risk a").eachAttr("href"))
                .containsExactly(
                        "/projects/" + project + "/contract",
                        "/projects/" + project + "/survey/roof",
                        "/projects/" + project + "/survey/routes",
                        "/projects/" + project + "/design",
                        "/projects/" + project + "/promises");
        assertThat(page("/roof-or-ground", branch.designer()).select(".note-risk a[href$=/contract]"))
                .isEmpty();
        assertThat(page("", branch.manager()).select("#placement ~ p.asked")).hasSize(1);
        decide("BOTH", "0", "Half and half.");
        assertThat(page().select(".note-risk a").eachAttr("href"))
                .contains("/projects/" + project + "/survey/roof", "/projects/" + project + "/survey/ground");
    }

    @Test
    void notYetNeedsOnlyWhatIsOpen() {
        assertThat(decide("choice", "NOT_YET", "reason", "A roofer looks first.", "version", "-1"))
                .hasStatus3xxRedirection();
        Document page = page();
        assertThat(page.select("h1").text()).endsWith("roof or ground is not decided yet");
        assertThat(page.select("#decision ~ dl").text()).isEqualTo("Still open A roofer looks first.");
    }

    @Test
    void whatCannotBeIsRefusedAtItsFieldAndTheRestIsKept() {
        MvcTestResult bad = decide(
                "choice",
                "MOON",
                "decidedBy",
                "T".repeat(121),
                "decidedOn",
                "soon",
                "decidedWith",
                "Perrin",
                "reason",
                "");
        assertThat(bad).hasStatus(422);
        Document page = TestPages.read(bad);
        assertThat(page.select(".field.bad")).hasSize(4);
        assertThat(page.getElementById("decidedWith").val()).isEqualTo("Perrin");
        assertThat(TestPages.read(decide("reason", "why", "version", "-1")).text())
                .contains("Choose where the array goes");
        assertThat(TestPages.read(decide("choice", "ROOF", "reason", "why", "version", "-1"))
                        .text())
                .contains("Write who of the firm decided.");
        MvcTestResult later = decide(
                "choice",
                "ROOF",
                "decidedBy",
                "T",
                "decidedWith",
                "P",
                "decidedOn",
                "2027-03-02",
                "reason",
                "why",
                "version",
                "-1");
        assertThat(later).hasStatus(422);
        assertThat(TestPages.read(later).text()).contains("what is still to come is not decided");
        assertThat(decide("choice", "ROOF", "decidedBy", "T", "decidedWith", "P", "decidedOn", "", "reason", "why"))
                .hasStatus(422);
        assertThat(decide()).hasStatus(422);
    }

    @Test
    void whoWasSlowerSeesBoth() {
        decide("GROUND", "-1", "The roof is old.");
        MvcTestResult slower = decide("ROOF", "-1", "The field is wet.");
        assertThat(slower).hasStatus(409);
        Document page = TestPages.read(slower);
        assertThat(page.text()).contains("The roof is old.", "The field is wet.", "the ground", "the roof");
        String version = page.selectFirst("input[name=version]").val();
        assertThat(decide("ROOF", version, "The field is wet.")).hasStatus3xxRedirection();
        assertThat(page().select("h1").text()).endsWith("decided for the roof");
        assertThat(decide("ROOF", "", "The field is wet.")).hasStatus(409);
    }

    @Test
    void measuresThatNoSiteHasBreakNothing() {
        weather.weather(branch, "Valley means");
        read("ground", Map.of("field_length_ft", "1000000", "field_width_ft", "3"));
        read(
                "roof",
                Map.of(
                        "plane.1.name", "Flat",
                        "plane.1.pitch_deg", "1",
                        "plane.1.azimuth_deg", "360",
                        "plane.1.width_ft", "180",
                        "plane.1.length_ft", "95",
                        "plane.2.name", "Dormer",
                        "plane.2.pitch_deg", "90",
                        "plane.2.azimuth_deg", "0",
                        "plane.2.width_ft", "2",
                        "plane.2.length_ft", "1"));
        Document page = page();
        assertThat(cell(page, "Size that fits", 1)).contains("Holds about 0 modules");
        assertThat(cell(page, "Size that fits", 0)).contains("Flat: ", "Dormer: 0 modules.");
    }

    @Test
    void aDesignerReadsButDoesNotDecideAndOthersFindNothing() {
        assertThat(get("/roof-or-ground/decision", branch.designer())).hasStatus(403);
        assertThat(get("/roof-or-ground", branch.crewLead())).hasStatus(403);
        assertThat(get("/roof-or-ground", world.branch().manager())).hasStatus(404);
    }

    @Test
    void theDatabaseTakesNoDecisionWithoutPeopleAndDay(
            @Autowired JdbcClient jdbc, @Autowired TransactionTemplate transaction) {
        decide("choice", "NOT_YET", "reason", "open", "version", "-1");
        assertThatThrownBy(() -> world.as(
                        branch.manager(),
                        () -> transaction.executeWithoutResult(
                                status -> jdbc.sql("update placement set choice = 'ROOF' where project_id = ?")
                                        .param(project)
                                        .update())))
                .hasMessageContaining("placement_says_who_and_when");
    }

    @Test
    void thePageTakesAFixedNumberOfQueries() {
        weather.weather(branch, "Valley means");
        page();
        int bare = Queries.count(() -> page());
        measured();
        decide("GROUND", "-1", "The roof is old.");
        assertThat(Queries.count(() -> page())).isEqualTo(bare).isLessThanOrEqualTo(15);
    }

    private void measured() {
        read("ground", FIELD);
        read("roof", BARN);
    }
}
