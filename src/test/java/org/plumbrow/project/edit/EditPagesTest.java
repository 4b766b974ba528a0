package org.plumbrow.project.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.project.JournalReader;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Standing;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

@PlumbrowTest
class EditPagesTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture fixture;

    @Autowired
    Projects projects;

    @Autowired
    JournalReader journal;

    private TestBranch branch;
    private UUID project;

    @BeforeEach
    void aProject() {
        branch = world.branch();
        project = fixture.aDairyGroundMount().in(branch).build();
    }

    private ProjectFacts facts() {
        return world.as(branch.manager(), () -> projects.facts(project));
    }

    private String page(String part) {
        return "/projects/" + project + part;
    }

    private static Map<String, String> contract(String version, String kw, String modules) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("version", version);
        fields.put("systemKwDc", kw);
        fields.put("systemKwAc", "75");
        fields.put("inverters", "3");
        fields.put("inverterKwAc", "25");
        fields.put("arrays[0].mounting", "GROUND");
        fields.put("arrays[0].modules", modules);
        fields.put("arrays[0].moduleW", "550 W");
        fields.put("arrays[0].tilt", "30");
        fields.put("arrays[0].azimuth", "180");
        fields.put("priceUsd", "$202,950");
        return fields;
    }

    @Test
    void aNumberIsReadAsItIsWrittenAndTheJournalSaysFromWhatToWhat() {
        assertThat(pages.post(branch.projectManager(), page("/contract"), contract("0", "110.0 kW", "200")))
                .hasStatus(302);

        assertThat(facts().contract().systemKwDc()).isEqualByComparingTo("110");
        assertThat(facts().contract().arrays().get(0).modules()).isEqualTo(200);
        assertThat(facts().contract().arrays().get(0).mounting()).isEqualTo(Mounting.GROUND);
        assertThat(facts().contract().priceUsd()).isEqualByComparingTo("202950");
        String sentence = world.as(
                branch.manager(), () -> journal.newest(project, 1).get(0).sentence());
        assertThat(sentence).contains("system size DC 99 kW → 110.0 kW".replace("110.0", "110"));
        assertThat(sentence).as("read by people who may not see money").doesNotContain("202");
    }

    @Test
    void anArrayIsAddedAndTakenOutAgain() {
        Map<String, String> two = contract("0", "99", "180");
        two.put("arrays[1].mounting", "PITCHED_ROOF");
        two.put("arrays[1].modules", "20");
        two.put("arrays[1].moduleW", "400");
        assertThat(pages.post(branch.projectManager(), page("/contract"), two)).hasStatus(302);
        assertThat(facts().contract().arrays()).hasSize(2);

        assertThat(pages.post(branch.projectManager(), page("/contract"), contract("1", "99", "180")))
                .hasStatus(302);
        assertThat(facts().contract().arrays()).hasSize(1);
        String sentence = world.as(
                branch.manager(), () -> journal.newest(project, 1).get(0).sentence());
        assertThat(sentence).contains("20 → nothing");
    }

    @Test
    void whatCannotBeReadIsStillThereAndTheMessageIsAtItsField() {
        MvcTestResult answer = pages.post(branch.projectManager(), page("/contract"), contract("0", "many", "2.5"));

        assertThat(answer)
                .hasStatus(422)
                .bodyText()
                .contains("value=\"many\"", "value=\"2.5\"", "value=\"550 W\"")
                .contains("Write the system size DC as a number from 0.1 to 20,000 kW.")
                .contains("Write the modules as a whole number from 1 to 100,000 modules.");
        assertThat(facts().contract().systemKwDc()).isEqualByComparingTo("99");
    }

    @Test
    void anEditOverANewerOneShowsTheirsBesideYoursAndChangesNothing() {
        assertThat(pages.post(branch.manager(), page("/contract"), contract("0", "120", "210")))
                .hasStatus(302);
        MvcTestResult late = pages.post(branch.projectManager(), page("/contract"), contract("0", "130", "220"));

        assertThat(late)
                .hasStatus(409)
                .bodyText()
                .contains("Theirs: 120", "Yours: 130", "name=\"version\" value=\"1\"");
        assertThat(facts().contract().systemKwDc()).isEqualByComparingTo("120");
    }

    @Test
    void twoPeopleAtDifferentPartsDoNotMeet() {
        assertThat(pages.post(branch.manager(), page("/contract"), contract("0", "120", "210")))
                .hasStatus(302);
        assertThat(pages.post(
                        branch.projectManager(),
                        page("/site"),
                        Map.of(
                                "version",
                                "0",
                                "street",
                                "9 New Lane",
                                "coordinates",
                                "41.9037, -77.6210",
                                "loads",
                                "DAIRY")))
                .hasStatus(302);

        assertThat(facts().contract().systemKwDc()).isEqualByComparingTo("120");
        assertThat(facts().site().street()).isEqualTo("9 New Lane");
        assertThat(facts().site().latitudeDeg()).isEqualByComparingTo("41.9037");
    }

    @Test
    void aStreetStandsInNoJournalLine() {
        pages.post(branch.projectManager(), page("/site"), Map.of("version", "0", "street", "9 New Lane"));

        List<String> lines = world.as(
                branch.manager(),
                () -> journal.newest(project, 20).stream()
                        .map(line -> line.sentence() + line.facts())
                        .toList());
        assertThat(lines).noneMatch(line -> line.contains("New Lane"));
    }

    @Test
    void coordinatesThatAreNoneAreAskedForAsAMapGivesThem() {
        assertThat(pages.post(branch.projectManager(), page("/site"), Map.of("version", "0", "coordinates", "95, 10")))
                .hasStatus(422)
                .bodyText()
                .contains("value=\"95, 10\"")
                .contains("Write the coordinates as latitude and longitude in degrees");
    }

    @Test
    void aNewProjectNeedsANameAndACustomerAndKeepsEverythingElseThatWasTyped() {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("name", "");
        fields.put("customer", "");
        fields.put("systemKwDc", "9.2");
        fields.put("arrays[0].mounting", "PITCHED_ROOF");
        fields.put("arrays[0].modules", "23");
        fields.put("promisedOn", "2027-06-01");
        assertThat(pages.post(branch.projectManager(), "/projects/new", fields))
                .hasStatus(422)
                .bodyText()
                .contains(
                        "Write the name of the project.",
                        "Write the customer&#39;s name.",
                        "value=\"9.2\"",
                        "value=\"2027-06-01\"");

        fields.put("name", "Alder home");
        fields.put("customer", "Runa");
        MvcTestResult opened = pages.post(branch.projectManager(), "/projects/new", fields);
        assertThat(opened).hasStatus(302);
        UUID id = UUID.fromString(
                String.valueOf(opened.getResponse().getRedirectedUrl()).substring("/projects/".length()));
        ProjectFacts facts = world.as(branch.manager(), () -> projects.facts(id));
        assertThat(facts.contract().systemKwDc()).isEqualByComparingTo(new BigDecimal("9.2"));
        assertThat(facts.customer()).isEqualTo("Runa");
    }

    @Test
    void aPromiseIsAddedAndTheOneBeforeStays() {
        Map<String, String> later =
                Map.of("milestone", "SYSTEM_ON", "date", "2027-05-03", "toleranceDays", "3", "promisedBy", "Ines");
        assertThat(pages.post(branch.projectManager(), page("/promises"), later))
                .hasStatus(302);

        assertThat(pages.get(branch.designer(), page("/promises")))
                .hasStatus(200)
                .bodyText()
                .contains("Mon, May 3, 2027", "Fri, Apr 16, 2027", "holds now");
        assertThat(pages.post(branch.projectManager(), page("/promises"), Map.of("date", "", "toleranceDays", "900")))
                .hasStatus(422)
                .bodyText()
                .contains("Choose the promised day.", "Write the tolerance as a whole number from 0 to 365 days.");
    }

    @Test
    void aProjectIsHeldWithAReasonAndTakenUpAgain() {
        assertThat(pages.post(
                        branch.projectManager(),
                        page("/standing"),
                        Map.of("to", "ON_HOLD", "reason", "", "version", "0")))
                .hasStatus(422)
                .bodyText()
                .contains("Write the reason.");
        assertThat(pages.post(
                        branch.projectManager(),
                        page("/standing"),
                        Map.of("to", "ON_HOLD", "reason", "Loan", "version", "0")))
                .hasStatus(302);
        assertThat(facts().standing()).isEqualTo(Standing.ON_HOLD);
        assertThat(pages.get(branch.projectManager(), page(""))).bodyText().contains("on hold");
    }

    @Test
    void anAssignmentIsUndoneAsANewLine() {
        UUID dov = branch.designer().personId();
        assertThat(pages.post(
                        branch.projectManager(),
                        page("/people"),
                        Map.of("version", "0", "duties[2].person", dov.toString())))
                .hasStatus(302);
        assertThat(facts().people().values())
                .extracting(ProjectFacts.InCharge::personId)
                .containsExactly(dov);
        int line = world.as(
                branch.manager(), () -> journal.newest(project, 1).get(0).number());

        assertThat(pages.get(branch.projectManager(), page("/journal")))
                .bodyText()
                .contains("/journal/" + line + "/undo");
        assertThat(pages.post(branch.projectManager(), page("/journal/" + line + "/undo"), Map.of()))
                .hasStatus(302);
        assertThat(facts().people().values())
                .extracting(ProjectFacts.InCharge::personId)
                .containsExactly(branch.projectManager().personId());
        assertThat(world.as(
                        branch.manager(),
                        () -> journal.newest(project, 1).get(0).number()))
                .isGreaterThan(line);
    }

    @Test
    void aDesignerReadsAndSeesNoPrice() {
        assertThat(pages.get(branch.projectManager(), page(""))).bodyText().contains("$198,000");
        assertThat(pages.get(branch.designer(), page("")))
                .hasStatus(200)
                .bodyText()
                .doesNotContain("$198,000");
        assertThat(pages.get(branch.designer(), page("/contract"))).hasStatus(403);
    }
}
