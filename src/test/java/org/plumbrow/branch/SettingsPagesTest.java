package org.plumbrow.branch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The pages on which a branch is set up: what is saved, what is refused and how, what the log says. */
@PlumbrowTest
class SettingsPagesTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    BranchSamples samples;

    @Autowired
    BranchSettings settings;

    private TestBranch branch;

    @BeforeEach
    void open() {
        branch = world.branch();
    }

    @ParameterizedTest
    @CsvSource({
        "/settings, 9",
        "/settings/branch, 2",
        "/settings/days, 2",
        "/settings/utilities, 2",
        "/settings/permit-offices, 1",
        "/settings/rates, 1",
        "/settings/fixed-times, 1",
        "/settings/waits, 1",
        "/settings/weather, 1",
        "/settings/changes, 2"
    })
    void eachPageTakesAsManyQueriesWithTwelveUtilitiesAsWithNone(String page, int queries) {
        get(page);
        int before = queriesOf(page);
        for (int i = 0; i < 12; i++) {
            samples.utility(branch, "Utility " + i);
            samples.permitOffice(branch, "Office " + i);
        }
        // who asks is one query more on every page
        assertThat(before).isEqualTo(queries + 1);
        assertThat(queriesOf(page)).isEqualTo(before);
    }

    @Test
    void newHoursAreSavedAndStandInTheLogWithWhoAndFromTo() {
        MvcTestResult saved = post("/settings/days", days(Map.of("morningStart", "06:30", "version", "0")));
        assertThat(saved).hasStatus(302);
        assertThat(world.as(branch.manager(), () -> settings.facts(branch.id()))
                        .hours()
                        .morningStart())
                .hasToString("06:30");
        assertThat(get("/settings/changes").select("tbody tr").get(0).text())
                .contains("Ines")
                .contains("working days")
                .contains("Morning from")
                .contains("07:00")
                .contains("06:30");
    }

    @Test
    void wordsInsteadOfANumberAreKeptWithTheMessageAtTheirFieldAndEverythingElseStays() {
        MvcTestResult refused = post(
                "/settings/branch",
                Map.of(
                        "name", "Fallow River",
                        "zone", "America/Chicago",
                        "yardAddress", "4 Mill Lane",
                        "yardLatitude", "forty",
                        "yardLongitude", "-77.62",
                        "travelSpeedMph", "45 mph",
                        "travelRoadFactor", "1.3",
                        "version", "0"));
        assertThat(refused).hasStatus(422);
        Document page = TestPages.read(refused);
        assertThat(page.getElementById("yardLatitude").val()).isEqualTo("forty");
        assertThat(page.getElementById("yardLatitude-wrong").text()).startsWith("Write the latitude in degrees");
        assertThat(page.getElementById("name").val()).isEqualTo("Fallow River");
        assertThat(page.getElementById("yardLongitude").val()).isEqualTo("-77.62");
        assertThat(page.select("#zone option[selected]").val()).isEqualTo("America/Chicago");
        assertThat(page.select("input[name=version]").val()).isEqualTo("0");
        assertThat(page.select("[role=alert] a").attr("href")).isEqualTo("#yardLatitude");
    }

    @Test
    void limitsAreSaidInWords() {
        MvcTestResult refused = post(
                "/settings/rates/trench",
                Map.of(
                        "low",
                        "100",
                        "typical",
                        "90",
                        "high",
                        "400",
                        "crewLeast",
                        "2",
                        "crewMost",
                        "3",
                        "firstUnitDays",
                        "0",
                        "version",
                        "0"));
        assertThat(refused).hasStatus(422);
        assertThat(TestPages.read(refused).getElementById("typical-wrong").text())
                .isEqualTo("A typical day brings at least 100.");
        MvcTestResult noDay = post(
                "/settings/days",
                Map.of(
                        "morningStart",
                        "07:00",
                        "morningEnd",
                        "12:00",
                        "afternoonStart",
                        "12:30",
                        "afternoonEnd",
                        "17:00",
                        "version",
                        "0"));
        assertThat(noDay).hasStatus(422);
        assertThat(TestPages.read(noDay).text()).contains("Tick at least one day of the week.");
    }

    @Test
    void theirsStandBesideYoursAndTheChoiceIsSaved() {
        Map<String, String> wait =
                Map.of("low", "2", "typical", "4", "high", "10", "dayKind", "WORKING", "version", "0");
        assertThat(post("/settings/waits/locate", wait)).hasStatus(302);
        MvcTestResult second = post(
                "/settings/waits/locate",
                Map.of("low", "2", "typical", "5", "high", "10", "dayKind", "CALENDAR", "version", "0"));
        assertThat(second).hasStatus(409);
        Document page = TestPages.read(second);
        assertThat(page.select("fieldset legend").eachText()).containsExactly("Usual, days", "Days that count");
        assertThat(page.text()).contains("Theirs: 4").contains("Yours: 5").contains("Yours: calendar days");
        assertThat(page.select("input[name=version]").val()).isEqualTo("1");
        assertThat(post(
                        "/settings/waits/locate",
                        Map.of("low", "2", "typical", "5", "high", "10", "dayKind", "WORKING", "version", "1")))
                .hasStatus(302);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0", "501", "-3", "7.5", "near"})
    void theDistanceOfADisconnectIsWholeFeet(String typed) {
        MvcTestResult answer = post(
                "/settings/utilities/new",
                Map.of(
                        "name", "Valley Electric",
                        "noticeWorkingDays", "10",
                        "appointmentWeekdays", "TUESDAY",
                        "workingWeekdays", "MONDAY",
                        "disconnectMostFt", typed));
        assertThat(answer).hasStatus(422);
        assertThat(TestPages.read(answer).select("input[name=disconnectMostFt]").val())
                .isEqualTo(typed);
        assertThat(TestPages.read(answer).text()).contains("Write the distance as whole feet from 1 to 500.");
    }

    @Test
    void aUtilityIsAddedWithItsHoursAndItsOwnDaysOff() {
        MvcTestResult added = post(
                "/settings/utilities/new",
                Map.of(
                        "name",
                        "Valley Electric",
                        "noticeWorkingDays",
                        "10",
                        "appointmentWeekdays",
                        "TUESDAY,THURSDAY",
                        "workingWeekdays",
                        "MONDAY,TUESDAY,WEDNESDAY,THURSDAY,FRIDAY",
                        "federalHolidays",
                        "true",
                        "disconnectMostFt",
                        "30",
                        "mustBePresent",
                        "customer",
                        "phone",
                        "555-555-0190",
                        "email",
                        ""));
        assertThat(added).hasStatus(302);
        String address = added.getResponse().getHeader("Location");
        assertThat(post(address + "/slots", Map.of("from", "08:00", "to", "10:00", "backBy", "15:30")))
                .hasStatus(302);
        assertThat(post(
                        address + "/closed",
                        Map.of("firstDay", "2027-03-11", "lastDay", "2027-03-12", "reason", "audit")))
                .hasStatus(302);
        Document page = get(address);
        assertThat(page.select("h1").text()).isEqualTo("Valley Electric wants 10 working days of notice");
        assertThat(page.select("input[name=disconnectMostFt]").val()).isEqualTo("30");
        assertThat(page.text())
                .contains("off between 8:00 am and 10:00 am, back by 3:30 pm")
                .contains("audit");
        UtilityFacts utility = world.as(branch.manager(), () -> settings.utilities(branch.id()))
                .get(0);
        assertThat(utility.switchesOn(java.time.LocalDate.of(2027, 3, 9))).isTrue();
        assertThat(utility.switchesOn(java.time.LocalDate.of(2027, 3, 10)))
                .as("a Wednesday")
                .isFalse();
        assertThat(utility.switchesOn(java.time.LocalDate.of(2027, 3, 11)))
                .as("its audit")
                .isFalse();
    }

    @Test
    void whatIsAddedIsOneLineOfTheLogWithAllThatItBeganWith() {
        samples.permitOffice(branch, "Quillback County");
        assertThat(get("/settings/changes")
                        .select("tbody tr")
                        .get(0)
                        .select("td")
                        .eachText())
                .containsExactly(
                        "Ines",
                        "permit office Quillback County",
                        "Added",
                        "–",
                        "Name: Quillback County; Code edition: NEC 2020");
    }

    @Test
    void aSecondUtilityOfTheSameNameIsRefusedByTheDatabaseInWordsAtItsField() {
        samples.utility(branch, "Valley Electric");
        MvcTestResult refused = post(
                "/settings/utilities/new",
                Map.of(
                        "name",
                        "Valley Electric",
                        "noticeWorkingDays",
                        "3",
                        "appointmentWeekdays",
                        "MONDAY",
                        "workingWeekdays",
                        "MONDAY",
                        "disconnectMostFt",
                        "10"));
        assertThat(refused).hasStatus(422);
        assertThat(TestPages.read(refused).getElementById("name-wrong").text())
                .isEqualTo("Another utility of the branch has this name. Choose another one.");
    }

    @Test
    void whatIsNoLongerOfferedCanBeOfferedAgain() {
        UUID office = samples.permitOffice(branch, "Quillback County");
        assertThat(post("/settings/permit-offices/" + office + "/end", Map.of()))
                .hasStatus(302);
        assertThat(get("/settings/permit-offices").text()).contains("not offered since Mon, Mar 1, 2027");
        assertThat(post("/settings/permit-offices/" + office + "/take-up-again", Map.of()))
                .hasStatus(302);
        assertThat(get("/settings/permit-offices").text()).doesNotContain("not offered since");
    }

    @Test
    void aClosedDayIsNoWorkingDayUntilItIsReopened() {
        java.time.LocalDate day = java.time.LocalDate.of(2027, 3, 8);
        assertThat(post("/settings/days/closed", Map.of("firstDay", "2027-03-08", "reason", "stock-taking")))
                .hasStatus(302);
        assertThat(branchWorksOn(day)).isFalse();
        MvcTestResult twice = post("/settings/days/closed", Map.of("firstDay", "2027-03-08", "reason", "again"));
        assertThat(twice).hasStatus(422);
        assertThat(TestPages.read(twice).getElementById("firstDay-wrong").text())
                .isEqualTo("One of these days is already closed. Choose other days.");
        String reopen = get("/settings/days").select("form[action$=reopen]").attr("action");
        assertThat(post(reopen, Map.of())).hasStatus(302);
        assertThat(branchWorksOn(day)).isTrue();
    }

    @Test
    void lostHalfDaysAreWrittenByMonthAndFamily() {
        assertThat(post("/settings/weather/roof", Map.of("january", "6", "february", "4.5", "version", "0")))
                .hasStatus(302);
        WeatherTable table = world.as(branch.manager(), () -> settings.weather(branch.id()));
        assertThat(table.lostHalfDays(WeatherFamily.ROOF, java.time.Month.FEBRUARY))
                .isEqualTo(4.5);
        assertThat(table.lostHalfDays(WeatherFamily.ROOF, java.time.Month.MARCH))
                .isZero();
        assertThat(get("/settings/weather").select("tbody tr").get(1).text()).contains("4.5");
    }

    @Test
    void everyFormFieldHasItsLabelAndEveryTableItsCaption() {
        UUID utility = samples.utility(branch, "Valley Electric");
        UUID office = samples.permitOffice(branch, "Quillback County");
        for (String address : List.of(
                "/settings",
                "/settings/branch",
                "/settings/days",
                "/settings/utilities",
                "/settings/utilities/new",
                "/settings/utilities/" + utility,
                "/settings/permit-offices",
                "/settings/permit-offices/new",
                "/settings/permit-offices/" + office,
                "/settings/rates",
                "/settings/rates/trench",
                "/settings/fixed-times",
                "/settings/fixed-times/mobilise",
                "/settings/waits",
                "/settings/waits/locate",
                "/settings/weather",
                "/settings/weather/ground",
                "/settings/changes")) {
            Document page = get(address);
            assertThat(page.select("h1")).as(address).hasSize(1);
            assertThat(page.select("table").size())
                    .as(address)
                    .isEqualTo(page.select("table > caption").size());
            page.select("main input:not([type=hidden]), main select, main textarea")
                    .forEach(input -> assertThat(
                                    page.select("label[for=" + input.id() + "]").size()
                                            + input.parents().select("label").size())
                            .as(address + " " + input)
                            .isPositive());
            List<String> ids = page.select("[id]").eachAttr("id");
            assertThat(ids).as(address).doesNotHaveDuplicates();
        }
    }

    private boolean branchWorksOn(java.time.LocalDate day) {
        return world.as(branch.manager(), () -> settings.facts(branch.id()))
                .calendar()
                .isWorking(day);
    }

    private static Map<String, String> days(Map<String, String> changed) {
        Map<String, String> all = new java.util.HashMap<>(Map.of(
                "workingDays", "MONDAY,TUESDAY,WEDNESDAY,THURSDAY,FRIDAY",
                "federalHolidays", "true",
                "morningStart", "07:00",
                "morningEnd", "12:00",
                "afternoonStart", "12:30",
                "afternoonEnd", "17:00"));
        all.putAll(changed);
        return all;
    }

    private int queriesOf(String page) {
        return Queries.count(() -> get(page));
    }

    private Document get(String address) {
        return pages.page(branch.manager(), address);
    }

    private MvcTestResult post(String address, Map<String, String> fields) {
        return pages.post(branch.manager(), address, fields);
    }
}
