package org.plumbrow.estimate.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.estimate.Estimates;
import org.plumbrow.project.ProjectFixture;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** Use as people bring it: typed, as a table, as the utility's file; good and bad. */
@PlumbrowTest
class UsePagesTest {

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    EstimateFixture fixture;

    @Autowired
    Estimates estimates;

    private TestBranch branch;
    private UUID project;

    @BeforeEach
    void aDairy() {
        branch = world.branch();
        project = projects.aDairyGroundMount().in(branch).build();
    }

    private Document get(String path) {
        return pages.page(branch.projectManager(), path);
    }

    private Document use() {
        return get("/projects/" + project + "/use");
    }

    private MvcTestResult post(String path, String... fields) {
        return pages.post(branch.projectManager(), path, fields);
    }

    private MvcTestResult bring(String name, String fileName, String text) {
        return mvc.post()
                .uri("/projects/" + project + "/use/file")
                .multipart()
                .file(new MockMultipartFile(
                        "file", fileName, "application/octet-stream", text.getBytes(StandardCharsets.UTF_8)))
                .param("name", name)
                .with(world.signedIn(branch.projectManager()))
                .with(csrf())
                .exchange();
    }

    private static String[] typed(String name, String june) {
        List<String> fields = new ArrayList<>(List.of("name", name, "first", "2026-01", "version", "-1"));
        for (int month = 0; month < 12; month++) {
            fields.addAll(List.of("months[" + month + "].kwh", month == 5 ? june : "12,000"));
        }
        return fields.toArray(String[]::new);
    }

    private EstimateFacts facts() {
        return world.as(branch.manager(), () -> estimates.of(project)).orElseThrow();
    }

    @Test
    void twelveTypedMonthsCountAtOnceAndSeveralMetersAddUp() {
        fixture.weather(branch, "Valley means");
        Document form = get("/projects/" + project + "/use/typed");
        assertThat(form.select("label").eachText()).contains("Mar 2026", "Feb 2027");
        assertThat(post("/projects/" + project + "/use/typed", typed("Barn 1", "16,200 kWh")))
                .hasStatus3xxRedirection();
        assertThat(post("/projects/" + project + "/use/typed", typed("House", "0")))
                .hasStatus3xxRedirection();
        Document page = use();
        assertThat(page.select("h1").text()).isEqualTo("Sedge Hollow Dairy uses 280,200 kWh a year");
        assertThat(page.select("section[aria-labelledby=meters] tbody th").eachText())
                .containsExactly("Barn 1", "House");
        assertThat(page.text()).contains("of what is made is used on site", "month by month");
        assertThat(facts().useKwhPerYear()).isEqualTo(280_200, within(1e-6));
        assertThat(facts().useKwhByMonth().get(5)).isEqualTo(16_200, within(1e-6));
    }

    @Test
    void aMonthThatLacksIsRefusedAndTheOthersStay() {
        MvcTestResult answer = post("/projects/" + project + "/use/typed", typed("Barn", ""));
        assertThat(answer).hasStatus(422);
        Document page = TestPages.read(answer);
        assertThat(page.select(".field.bad .wrong").text())
                .isEqualTo("Write the use of Jun 2026 as a number from 0 to 10,000,000 kWh.");
        assertThat(page.select("input[name=months[4].kwh]").val()).isEqualTo("12,000");
        assertThat(post("/projects/" + project + "/use/typed")).hasStatus(422);
        assertThat(post("/projects/" + project + "/use/typed", "first", "soon", "name", "x"))
                .hasStatus(422);
    }

    @Test
    void twoMetersOfOneNameAreNotTaken() {
        post("/projects/" + project + "/use/typed", typed("Barn", "1"));
        MvcTestResult again = post("/projects/" + project + "/use/typed", typed("barn", "2"));
        assertThat(again).hasStatus(422);
        assertThat(TestPages.read(again).text()).contains("Another meter of this project has that name.");
    }

    @Test
    void typedMonthsAreCorrectedAndWhoWasSlowerSeesBoth() {
        UUID meter = fixture.use(branch, project, "Barn", 1000);
        String[] fields = typed("Barn", "5");
        fields[5] = "0";
        assertThat(post("/use-meters/" + meter + "/typed", fields)).hasStatus3xxRedirection();
        assertThat(use().select("h1").text()).contains("132,005");
        fields[17] = "7";
        MvcTestResult slower = post("/use-meters/" + meter + "/typed", fields);
        assertThat(slower).hasStatus(409);
        assertThat(TestPages.read(slower).text()).contains("Jun 2026, kWh");
    }

    /** Bills from the 11th to the 10th; one estimated, one that lacks. */
    private static String bills(int lacking) {
        StringBuilder text = new StringBuilder("Start,End,kWh,Estimated\r\n");
        LocalDate from = LocalDate.of(2025, 12, 11);
        for (int bill = 0; bill < 13; bill++) {
            if (bill != lacking) {
                text.append("%s,%s,\"3,100\",%s\r\n".formatted(from, from.plusMonths(1), bill == 3 ? "yes" : ""));
            }
            from = from.plusMonths(1);
        }
        return text.toString();
    }

    @Test
    void billsThatDoNotMatchMonthsAreLookedAtBeforeTheyCount() {
        MvcTestResult brought = bring("Barn", "bills.csv", "\uFEFF" + bills(-1));
        assertThat(brought).hasStatus3xxRedirection();
        String address = brought.getResponse().getHeader("Location");
        Document look = get(address);
        assertThat(look.select("h1").text()).isEqualTo("Barn: look at these readings, then let them count");
        assertThat(look.text()).contains("13 readings", "1 estimated", "Mar 2026");
        assertThat(look.select("section[aria-labelledby=seen] th").eachText()).contains("Start", "kWh");
        assertThat(use().select("h1").text()).contains("not known");
        assertThat(post(address + "/count")).hasStatus3xxRedirection();
        String counted = use().select("h1").text();
        double kwh = Double.parseDouble(counted.replaceAll("\\D", ""));
        assertThat(kwh).isCloseTo(12 * 3100, within(0.01 * 12 * 3100));
        assertThat(post(address + "/leave-out")).hasStatus3xxRedirection();
        assertThat(use().select("h1").text()).contains("not known");
    }

    @Test
    void aBillThatLacksIsSaidAndItsMonthStandsOnWhatIsKnown() {
        String address = bring("Barn", "bills.csv", bills(6)).getResponse().getHeader("Location");
        assertThat(get(address).select("section[aria-labelledby=said] li").text())
                .contains("2026");
        post(address + "/count");
        assertThat(use().text()).containsAnyOf("months are not known", "known in part");
    }

    @Test
    void hourlyReadingsAreSetAgainstTheHoursOfProduction() {
        fixture.weather(branch, "Valley means");
        StringBuilder text = new StringBuilder("start,kwh\n");
        ZonedDateTime at = ZonedDateTime.of(2026, 1, 1, 0, 0, 0, 0, ZoneId.of("America/New_York"));
        while (at.getYear() == 2026) {
            text.append(at.toLocalDateTime())
                    .append(',')
                    .append(at.getHour() < 6 ? 20 : 2)
                    .append('\n');
            at = at.plusHours(1);
        }
        String address =
                bring("Barn", "hours.csv", text.toString()).getResponse().getHeader("Location");
        post(address + "/count");
        assertThat(use().text()).contains("hour by hour");
        assertThat(world.as(branch.manager(), () -> estimates.useByHour(project)))
                .isPresent();
    }

    @ParameterizedTest
    @CsvSource({
        "x.csv,'',Choose a file",
        "x.csv,'day;amount\n1;2\n',no column",
        "x.csv,'start,end,kwh\n13/32/2026,1/1/2027,5\n','Line 2: \"13/32/2026\" is no date'",
        "x.csv,'start,end,kwh\n2026-01-01,2026-02-01,plenty\n','Line 2: \"plenty\" is no use in kWh'",
        "x.csv,'start,end,kwh\n2026-02-01,2026-01-01,5\n',does not end after it begins",
        "x.xml,'<html><body>no</body></html>',",
        "x.xml,'<feed xmlns=\"http://www.w3.org/2005/Atom\"><entry>',"
    })
    void aBadFileIsRefusedAtItsFieldAndTheNameIsKept(String fileName, String text, String said) {
        MvcTestResult answer = bring("Barn 2", fileName, text == null ? "" : text);
        assertThat(answer).hasStatus(422);
        Document page = TestPages.read(answer);
        assertThat(page.select(".field.bad .wrong").text()).isNotBlank().contains(said == null ? "" : said);
        assertThat(page.select("input[name=name]").val()).isEqualTo("Barn 2");
    }

    @Test
    void aTableWithOtherNamesIsShownAsItWasUnderstood() {
        MvcTestResult answer = bring("Barn", "x.csv", "day,amount\n2026-01-01,5\n");
        assertThat(answer).hasStatus(422);
        assertThat(TestPages.read(answer)
                        .select("section[aria-labelledby=seen] th")
                        .eachText())
                .containsExactly("day", "amount");
    }

    @Test
    void pastedRowsAreAFileToo() {
        MvcTestResult answer = post(
                "/projects/" + project + "/use/file",
                "name",
                "Well",
                "pasted",
                bills(-1).replace("\r", ""));
        assertThat(answer).hasStatus3xxRedirection();
        assertThat(get(answer.getResponse().getHeader("Location")).text()).contains("13 readings");
    }

    @Test
    void aRealGreenButtonFileIsReadThroughThePage() throws Exception {
        Path file = Path.of(
                System.getProperty("plumbrow.reference", "../shared/reference"),
                "greenbutton",
                "Coastal_Multi_Family_Daily_Jan_1_2011_to_Jan_1_2012_RetailCustomer_4.xml");
        Assumptions.assumeTrue(Files.exists(file), "the open Green Button samples are not here: " + file);
        MvcTestResult answer = bring("House", "usage.xml", read(file));
        assertThat(answer).hasStatus3xxRedirection();
        Document look = get(answer.getResponse().getHeader("Location"));
        assertThat(look.text()).contains("kWh of use", "Jul 2011");
    }

    private static String read(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    @Test
    void aMeterIsTakenAwayAndPutBack() {
        UUID meter = fixture.use(branch, project, "Barn", 1000);
        post("/use-meters/" + meter + "/remove");
        assertThat(use().text()).contains("No use is known yet.");
        post("/use-meters/" + meter + "/restore");
        assertThat(use().select("h1").text()).contains("12,000");
    }

    @Test
    void theSizeKeepsTheCapAndStandsBesideItsNeighbours() {
        fixture.weather(branch, "Valley means");
        assertThat(get("/projects/" + project + "/use/size").text()).contains("Use of twelve months is not known.");
        fixture.use(branch, project, "Barn", 10_000);
        Document free = get("/projects/" + project + "/use/size");
        assertThat(free.select("section[aria-labelledby=answer] tbody tr")).hasSize(3);
        assertThat(free.select("h1").text()).contains(" % of the use");
        assertThat(free.text()).contains("The contract has 99.0 kW DC");
        var limit = mvc.post()
                .uri("/settings/size-limits/branch")
                .with(world.signedIn(branch.manager()))
                .with(csrf())
                .param("mostOffsetPercent", "80 %")
                .param("mostKwAc", "")
                .param("version", "-1")
                .exchange();
        assertThat(limit).hasStatus3xxRedirection();
        Document capped = get("/projects/" + project + "/use/size?fewest=10&most=15");
        assertThat(capped.select("section[aria-labelledby=answer] h2").text())
                .isEqualTo("Branch policy: at most 80.0 % of the use.");
        assertThat(capped.select("section[aria-labelledby=answer] .st-trouble").text())
                .contains("Branch policy");
        double offset = Double.parseDouble(capped.select("h1").text().replaceAll(".* DC, ([0-9.]+) %.*", "$1"));
        assertThat(offset).isLessThanOrEqualTo(80.0).isGreaterThan(75.0);
    }

    @Test
    void aQuestionThatIsNoneIsRefusedOnTheSamePage() {
        fixture.weather(branch, "Valley means");
        fixture.use(branch, project, "Barn", 10_000);
        MvcTestResult answer = mvc.get()
                .uri("/projects/" + project + "/use/size?offset=much&fewest=20&most=10")
                .with(world.signedIn(branch.designer()))
                .exchange();
        assertThat(answer).hasStatus(422);
        Document page = TestPages.read(answer);
        assertThat(page.select(".field.bad")).hasSize(1);
        assertThat(page.select("input[name=offset]").val()).isEqualTo("much");
    }

    @Test
    void limitsOutOfBoundsAreRefusedAndWhoWasSlowerSeesBoth() {
        var bad = limit("900", "none", "-1");
        assertThat(bad).hasStatus(422);
        assertThat(TestPages.read(bad).select(".field.bad")).hasSize(2);
        assertThat(limit("110", "25", "-1")).hasStatus3xxRedirection();
        var slower = limit("120", "25", "-1");
        assertThat(slower).hasStatus(409);
        assertThat(TestPages.read(slower).text()).contains("110", "120");
    }

    private MvcTestResult limit(String percent, String kw, String version) {
        return pages.post(
                branch.manager(),
                "/settings/size-limits/branch",
                "mostOffsetPercent",
                percent,
                "mostKwAc",
                kw,
                "version",
                version);
    }

    @Test
    void thePageTakesAsManyQueriesForThreeMetersAsForOne() {
        fixture.weather(branch, "Valley means");
        fixture.use(branch, project, "Barn", 1000);
        use();
        int one = Queries.count(this::use);
        fixture.use(branch, project, "House", 1000);
        fixture.use(branch, project, "Well", 1000);
        assertThat(Queries.count(this::use)).isEqualTo(one).isLessThanOrEqualTo(15);
    }
}
