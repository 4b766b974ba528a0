package org.plumbrow.estimate.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.energy.weather.InventedWeather;
import org.plumbrow.calc.energy.weather.ReferenceWeather;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** Weather as people bring it, good and bad. */
@PlumbrowTest
class WeatherYearPagesTest {

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    EstimateFixture fixture;

    private TestBranch branch;

    @BeforeEach
    void aBranch() {
        branch = world.branch();
    }

    private MvcTestResult bring(String fileName, byte[] bytes, String name) {
        return mvc.post()
                .uri("/weather/file")
                .multipart()
                .file(new MockMultipartFile("file", fileName, "application/octet-stream", bytes))
                .param("name", name)
                .with(world.signedIn(branch.projectManager()))
                .with(csrf())
                .exchange();
    }

    private MvcTestResult bring(String fileName, String text, String name) {
        return bring(fileName, text.getBytes(StandardCharsets.UTF_8), name);
    }

    private MvcTestResult post(String path, String... fields) {
        return pages.post(branch.manager(), path, fields);
    }

    private Document get(String path) {
        return pages.page(branch.manager(), path);
    }

    private Document kept(MvcTestResult answer) {
        assertThat(answer).hasStatus3xxRedirection();
        return get(answer.getResponse().getHeader("Location"));
    }

    @Test
    void aFileIsReadAndItsPageSaysWhatItHolds() {
        Document page = kept(bring("somewhere.epw", InventedWeather.text(InventedWeather.epw()), "Somewhere"));
        assertThat(page.select("h1").text()).startsWith("Somewhere: ").endsWith(" kWh/m² of sun a year");
        assertThat(page.text()).contains("EPW file", "41.500° north, −88.250° east, 689 ft", "1990 to 1993", "°F");
        assertThat(page.select("td.chart rect[width=100.0%]")).hasSize(1);
        assertThat(page.text()).doesNotContain("made from means");
    }

    @ParameterizedTest
    @CsvSource({"tmy3,000000.CSV,TMY3 file,1988", "nsrdb,hours.csv,NSRDB file,2010"})
    void theFormatIsToldFromTheFirstLines(String form, String fileName, String kind, String years) {
        List<String> lines = form.equals("tmy3")
                ? InventedWeather.tmy3(InventedWeather.year())
                : InventedWeather.nsrdb(InventedWeather.year());
        Document page = kept(bring(fileName, InventedWeather.text(lines), ""));
        assertThat(page.text()).contains(kind, years);
    }

    @Test
    void aByteOrderMarkAndLineEndsOfAnotherSystemMakeNoDifference() {
        String text = "\uFEFF" + InventedWeather.text(InventedWeather.epw()).replace("\n", "\r\n");
        assertThat(kept(bring("x.epw", text, "Marked")).text()).contains("1990 to 1993");
    }

    @Test
    void anEndingThatSaysNothingIsNoHindrance() {
        assertThat(kept(bring("download", InventedWeather.text(InventedWeather.epw()), "No ending"))
                        .text())
                .contains("EPW file");
    }

    @Test
    void aFileThatStopsIsRefusedAtItsFieldAndTheNameIsKept() {
        List<String> lines = InventedWeather.epw();
        MvcTestResult answer =
                bring("x.epw", InventedWeather.text(lines.subList(0, lines.size() - 100)), "North field");
        assertThat(answer).hasStatus(422);
        Document page = TestPages.read(answer);
        assertThat(page.select(".field.bad .wrong").text()).contains("Line 8,668");
        assertThat(page.select("[role=alert]").text()).contains("Line 8,668");
        assertThat(page.select("input[name=name]").val()).isEqualTo("North field");
        assertThat(get("/weather").text()).contains("No weather for estimates yet");
    }

    @ParameterizedTest
    @CsvSource({
        "x.epw,'',empty",
        "x.epw,'LOCATION;Somewhere;-;-',semicolons",
        "x.epw,'<html><body>Not found</body></html>',web page",
        "x.csv,'a,b,c',none of the weather formats",
        "x.epw,'PK packed',still packed"
    })
    void whatIsNoWeatherIsNamedAsWhatItSeems(String fileName, String text, String said) {
        MvcTestResult answer = bring(fileName, text, "");
        assertThat(answer).hasStatus(422);
        assertThat(TestPages.read(answer).select(".wrong").text().toLowerCase())
                .containsAnyOf(said, "choose the file first");
    }

    @Test
    void wrongUnitsAreRefused() {
        List<String> lines = new ArrayList<>();
        for (String line : InventedWeather.epw()) {
            String[] cells = line.split(",", -1);
            for (int cell = 13; cell < 16 && line.startsWith("199"); cell++) {
                cells[cell] = String.valueOf(Math.round(3.6 * Double.parseDouble(cells[cell])));
            }
            lines.add(String.join(",", cells));
        }
        MvcTestResult answer = bring("x.epw", InventedWeather.text(lines), "");
        assertThat(answer).hasStatus(422);
        assertThat(TestPages.read(answer).select(".wrong").text()).isNotBlank();
    }

    @Test
    void missingHoursAreFilledAndTheFillingStaysInSight() {
        List<String> lines = InventedWeather.epw();
        for (int hour = 4000; hour < 4003; hour++) {
            String[] cells = lines.get(8 + hour).split(",", -1);
            cells[13] = "9999";
            lines.set(8 + hour, String.join(",", cells));
        }
        Document page = kept(bring("x.epw", InventedWeather.text(lines), "With gaps"));
        assertThat(page.text()).contains("is missing in 3 hours", "Stays with every figure");
        assertThat(get("/weather").text()).contains("1 warning");
    }

    @Test
    void theSameFileIsKeptOnce() {
        String text = InventedWeather.text(InventedWeather.epw());
        kept(bring("a.epw", text, "First"));
        MvcTestResult again = bring("b.epw", text, "Second");
        assertThat(again).hasStatus(422);
        assertThat(TestPages.read(again).text()).contains("This file is in the library already, as “First”.");
    }

    @Test
    void twoOfOneNameAreNotTaken() {
        fixture.weather(branch, "Valley");
        MvcTestResult again = bring("a.epw", InventedWeather.text(InventedWeather.epw()), "valley");
        assertThat(again).hasStatus(422);
        assertThat(TestPages.read(again).text()).contains("Another weather of this branch has that name.");
    }

    @ParameterizedTest
    @EnumSource(ReferenceWeather.class)
    void aRealFileIsReadThroughThePage(ReferenceWeather site) {
        byte[] bytes = site.text().getBytes(StandardCharsets.ISO_8859_1);
        Document page = kept(bring("file" + (site == ReferenceWeather.MIAMI ? ".tm2" : ".csv"), bytes, site.name()));
        String expected = switch (site) {
            case CHICAGO -> "global 1,407, beam 1,294, diffuse 660";
            case DENVER -> "global 1,670, beam 1,978, diffuse 556";
            case TUCSON -> "global 2,002, beam 2,437, diffuse 539";
            case GREENSBORO -> "global 1,566, beam 1,477, diffuse 682";
            case MIAMI -> "global 1,793, beam 1,505, diffuse 810";
        };
        assertThat(page.text()).contains(expected);
    }

    private String[] meansFields(String august) {
        List<String> fields = new ArrayList<>(List.of(
                "name",
                "Valley",
                "latitude",
                "41.9",
                "longitude",
                "−77.6",
                "elevation",
                "1,400 ft",
                "utcOffset",
                "-5",
                "invented",
                "true"));
        for (int month = 0; month < 12; month++) {
            fields.addAll(List.of(
                    "months[" + month + "].ghi",
                    month == 7 ? august : String.valueOf(EstimateFixture.GHI[month]),
                    "months[" + month + "].air",
                    Math.round(EstimateFixture.AIR[month] * 1.8 + 32) + " °F",
                    "months[" + month + "].wind",
                    "6"));
        }
        return fields.toArray(String[]::new);
    }

    @Test
    void twelveMeansMakeAYearThatSaysSo() {
        assertThat(get("/weather/means").select("input[name=utcOffset]").val()).isEqualTo("−5");
        Document page = kept(post("/weather/means", meansFields("5.2")));
        assertThat(page.text())
                .contains(
                        "invented",
                        "made from means",
                        "made from twelve monthly means",
                        "Measured against five public");
    }

    @Test
    void aWordAmongTheMeansIsRefusedAtItsFieldAndTheOthersStay() {
        MvcTestResult answer = post("/weather/means", meansFields("a lot"));
        assertThat(answer).hasStatus(422);
        Document page = TestPages.read(answer);
        assertThat(page.select(".field.bad")).hasSize(1);
        assertThat(page.text()).contains("Write the radiation of Aug as a number from 0 to 10 kWh/m2 a day.");
        assertThat(page.select("input[name=months[7].ghi]").val()).isEqualTo("a lot");
        assertThat(page.select("input[name=months[0].air]").val()).isEqualTo("27 °F");
    }

    @Test
    void moreSunThanThereIsIsRefusedAtItsMonth() {
        MvcTestResult answer = post("/weather/means", meansFields("9.9"));
        assertThat(answer).hasStatus(422);
        assertThat(TestPages.read(answer).select(".field.bad .wrong").text()).contains("more than the sun sends there");
    }

    @Test
    void aZoneThatDoesNotFitTheLongitudeIsRefused() {
        String[] fields = meansFields("5.2");
        fields[9] = "5";
        MvcTestResult answer = post("/weather/means", fields);
        assertThat(answer).hasStatus(422);
        assertThat(TestPages.read(answer).text()).contains("does not fit 5 hours from UTC");
    }

    @Test
    void anEmptyFormNamesEachFieldAndLosesNone() {
        MvcTestResult answer = post("/weather/means");
        assertThat(answer).hasStatus(422);
        assertThat(TestPages.read(answer).select("input[name$=.ghi]")).hasSize(12);
    }

    @Test
    void aNameIsChangedAndWhoWasSlowerSeesBoth() {
        UUID id = fixture.weather(branch, "Valley");
        assertThat(post("/weather/" + id, "name", "Quillback", "version", "0")).hasStatus3xxRedirection();
        MvcTestResult slower = post("/weather/" + id, "name", "Sedge", "version", "0");
        assertThat(slower).hasStatus(409);
        assertThat(TestPages.read(slower).text()).contains("Quillback", "Sedge");
        Document page = get("/weather/" + id);
        assertThat(page.select("h1").text()).startsWith("Quillback");
        assertThat(page.text()).doesNotContain("invented, ");
    }

    @Test
    void whatIsNoLongerOfferedCanBeOfferedAgain() {
        UUID id = fixture.weather(branch, "Valley");
        post("/weather/" + id + "/end");
        assertThat(get("/weather").text()).contains("no longer offered");
        post("/weather/" + id + "/offer");
        assertThat(get("/weather").text()).doesNotContain("no longer offered");
    }

    @Test
    void theListTakesAFixedNumberOfQueries() {
        fixture.weather(branch, "One");
        int one = Queries.count(() -> get("/weather"));
        fixture.weather(branch, "Two");
        fixture.weather(branch, "Three");
        assertThat(Queries.count(() -> get("/weather"))).isEqualTo(one).isLessThanOrEqualTo(8);
    }
}
