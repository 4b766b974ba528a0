package org.plumbrow.cutover.ridethrough;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** How long a site stands without power: writing down what is on it, and what the page says. */
@PlumbrowTest
class WithoutPowerPagesTest {

    /** Twenty-two thousand broilers of 6 lb in a closed house of 400 by 60 ft: minutes on a hot day. */
    static final Map<String, String> HOT_HOUSE = cells(
            "mark",
            "house 1",
            "animals",
            "BROILERS",
            "number",
            "22000",
            "massLb",
            "6",
            "lengthFt",
            "400",
            "widthFt",
            "60",
            "heightFt",
            "10",
            "wallR",
            "10",
            "ceilingR",
            "19",
            "insideF",
            "80");

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    SiteLoads loads;

    private UUID project;
    private Visitor pm;

    @BeforeEach
    void aDairy() {
        CutoverFixture.Ground ground = fixture.ground();
        project = fixture.dairy(ground);
        pm = ground.branch().projectManager();
    }

    static Map<String, String> cells(String... pairs) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            cells.put(pairs[i], pairs[i + 1]);
        }
        return cells;
    }

    private MvcTestResult get(String suffix) {
        return pages.get(pm, "/projects/" + project + suffix);
    }

    private MvcTestResult write(String kind, long version, Map<String, String> cells) {
        var request = mvc.post()
                .uri("/projects/" + project + "/without-power/" + kind)
                .with(world.signedIn(pm))
                .with(csrf())
                .param("sent[version]", Long.toString(version));
        cells.forEach((name, value) -> request.param("rows[0].cells[" + name + "]", value));
        return request.exchange();
    }

    private static Document page(MvcTestResult answer) {
        return TestPages.read(answer);
    }

    @Test
    void nothingWrittenIsSaidAndNotTakenAsNothingThere() {
        MvcTestResult answer = get("/without-power");
        assertThat(answer).hasStatusOk();
        assertThat(page(answer).select("h1").text()).isEqualTo("Nothing is written down that suffers without power");
    }

    @Test
    void aFullHouseOnAHotDayStandsMinutesAsARangeWithTheAlarmOnItsShortEnd() {
        assertThat(write("houses", -1, HOT_HOUSE)).hasStatus3xxRedirection();
        Document page = page(get("/without-power?day=2027-07-20&time=14:00&minutes=90&outsideF=92&humidity=60"));
        assertThat(page.select("h1").text()).matches("house 1 comes first: \\d+ min to \\d+ min without power");
        assertThat(page.text())
                .contains("The short end is shorter than the planned outage")
                .contains("Halved for planning")
                .contains("only the air warms (mass factor 1)")
                .contains("Watch the animals, not the screen")
                .contains("University of Kentucky poultry manual");
    }

    @Test
    void aHouseThatStandsOnlyWhileItsCurtainsOpenSaysSoFirst() {
        Map<String, String> curtains = new LinkedHashMap<>(HOT_HOUSE);
        curtains.put("opens", "yes");
        curtains.put("openAch", "60");
        write("houses", -1, curtains);
        Document page = page(get("/without-power?day=2027-04-20&time=09:00&minutes=90&outsideF=45&humidity=60"));
        assertThat(page.select("h1").text())
                .startsWith("house 1 stands only while its curtains or vents open; if not, ");
        assertThat(page.text()).contains("somebody stands by to open them by hand");
    }

    @Test
    void aFigureOutsideItsLimitsIsRefusedAtItsFieldAndKept() {
        Map<String, String> wrong = new LinkedHashMap<>(HOT_HOUSE);
        wrong.put("wallR", "0");
        MvcTestResult answer = write("houses", -1, wrong);
        assertThat(answer).hasStatus(422);
        assertThat(page(answer).select("input[id='rows0.cellswallR']").val()).isEqualTo("0");
        assertThat(page(answer).text()).contains("Write the walls as a number from 0.6 to 100 R.");
    }

    @Test
    void whatNoBalanceCanBeMadeOfIsRefusedInWords() {
        Map<String, String> heavy = new LinkedHashMap<>(HOT_HOUSE);
        heavy.put("massLb", "600");
        MvcTestResult answer = write("houses", -1, heavy);
        assertThat(answer).hasStatus(422);
        assertThat(page(answer).text()).contains("house 1: mass of a bird");
    }

    @Test
    void aSecondPersonsOlderPageShowsTheirsBesideYours() {
        write("houses", -1, HOT_HOUSE);
        Map<String, String> other = new LinkedHashMap<>(HOT_HOUSE);
        other.put("number", "18000");
        MvcTestResult answer = write("houses", -1, other);
        assertThat(answer).hasStatus(409);
        assertThat(page(answer).text()).contains("22000").contains("18000");
    }

    @Test
    void whereSomebodyDependsOnEquipmentThereIsNoFigure() {
        write("home", -1, cells("medical", "yes", "refrigerator", "yes", "freezer", "FULL"));
        Document page = page(get("/without-power"));
        assertThat(page.select("h1").text())
                .isEqualTo("Talk to the customer: somebody depends on electrical equipment");
        assertThat(page.text()).contains("no time is given").doesNotContain("48 h to");
    }

    @Test
    void aGeneratorIsHeldAgainstItsLoadAndMayStop() {
        write("houses", -1, HOT_HOUSE);
        write(
                "generator",
                -1,
                cells(
                        "ratedKw",
                        "100",
                        "transfer",
                        "AUTOMATIC",
                        "rotation",
                        "SAME",
                        "fuelGal",
                        "60",
                        "lastRun",
                        "2027-02-26"));
        write("loads", -1, cells("mark", "fan", "number", "16", "kw", "1.1", "start", "5"));
        Document page = page(get("/without-power?day=2027-03-02&time=09:00&minutes=90&outsideF=60"));
        assertThat(page.text())
                .contains("What is asked of it is met; it may stop all the same")
                .contains("If it stops at minute 30")
                .contains("back-feed");
    }

    @Test
    void aWrongTimeOrHourIsSaidInWords() {
        Document tank = page(write(
                "tank",
                -1,
                cells(
                        "fullLb",
                        "12000",
                        "milkLb",
                        "9000",
                        "milkF",
                        "38",
                        "roomF",
                        "75",
                        "from1",
                        "five",
                        "to1",
                        "07:00",
                        "afterF",
                        "50",
                        "coolingF",
                        "20")));
        assertThat(tank.text()).contains("Write the beginning of the first milking as a time, for example 07:30.");
        assertThat(tank.select("[name=rows[0].cells[from1]]").val()).isEqualTo("five");
        MvcTestResult hour = get("/without-power?day=2027-03-02&time=nine&minutes=90");
        assertThat(hour).hasStatus(422);
        assertThat(page(hour).select("#time-wrong").text()).isEqualTo("Write the time like 09:00.");
    }

    @Test
    void thePageTakesAFixedNumberOfQueries() {
        write("houses", -1, HOT_HOUSE);
        get("/without-power");
        assertThat(Queries.count(() -> assertThat(get("/without-power")).hasStatusOk()))
                .isLessThanOrEqualTo(30);
    }
}
