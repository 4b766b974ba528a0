package org.plumbrow.cutover.after;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestClock;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.cutover.OutageRecords;
import org.plumbrow.cutover.Outages;
import org.plumbrow.cutover.daylog.DayTaps;
import org.plumbrow.evidence.MadeUpPhoto;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The report of the day: two readings of the same facts, the same whoever opens it. */
@PlumbrowTest
class DayReportTest {

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    TestClock clock;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    OutageRecords records;

    @Autowired
    Outages outages;

    @Autowired
    DayTaps taps;

    private UUID project;
    private Visitor pm;
    private String report;

    @BeforeEach
    void aDayThatIsTappedThrough() {
        Ground ground = fixture.ground();
        project = fixture.noticeGiven(ground, fixture.home(ground));
        pm = ground.branch().projectManager();
        world.as(
                pm,
                () -> assertThat(records.utilityConfirms(project, "VE-7788")).isEmpty());
        UUID window = world.as(pm, () -> outages.live(project).orElseThrow().id());
        report = "/projects/" + project + "/outage/report/" + window;
        clock.standAt("2027-03-26T12:28:00Z");
        taps.upTo(pm, project, "7");
        taps.photo(pm, project, "7", MadeUpPhoto.jpeg(320, 200));
        taps.wrong(pm, project, "A ladder slipped, nobody hurt");
        taps.nearMiss(pm, project, "A boom came near the line.", "It could have touched.", "Moved it.");
        taps.tap(pm, project, "8", "14");
    }

    private MvcTestResult get(String address) {
        return pages.get(pm, address);
    }

    private Document page() throws Exception {
        return TestPages.read(get(report));
    }

    private static String text(byte[] pdf) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void beforeTheLogIsClosedThereIsNoReport() throws Exception {
        assertThat(page().select("h1").text()).isEqualTo("The report opens once the day log is closed");
        assertThat(get(report + "/utility")).hasStatus(303).hasRedirectedUrl(report);
    }

    @Test
    void theUtilityGetsNumberTimesNamesReadingsWithLimitsAndNearMisses() throws Exception {
        taps.close(pm, project);
        byte[] pdf = get(report + "/utility").getResponse().getContentAsByteArray();
        assertThat(text(pdf))
                .contains("Utility’s number for the appointment: VE-7788")
                .contains("Actual: off at 8:48 AM, on at")
                .contains("minutes without power")
                .contains("Step 4, Utility opens the service 9:00 AM 8:48 AM")
                .contains("Leg A to neutral 120.0 V volts, usually 114 to 126")
                .contains("Sil")
                .contains("lugs.jpg, brought by")
                .doesNotContain("cannot be shown")
                .contains("A ladder slipped, nobody hurt")
                .contains("near miss: A boom came near the line. Could have: It could have touched. Done: Moved it.")
                .contains("It does not say that equipment may be touched");
        clock.pass(java.time.Duration.ofDays(3));
        assertThat(get(report + "/utility").getResponse().getContentAsByteArray())
                .isEqualTo(pdf);
    }

    @Test
    void theCustomerGetsPlainWordsAndNothingOfTheHouse() throws Exception {
        taps.close(pm, project);
        byte[] pdf = get(report + "/customer").getResponse().getContentAsByteArray();
        assertThat(text(pdf))
                .contains("Your power cut on Friday, March 26, 2027")
                .contains(
                        "Your power was off from 8:48 AM to 9:36 AM: 48 minutes. We had told you 90 minutes, and to plan"
                                + " for 120.")
                .contains("Do not open or touch electric boxes and wires")
                .doesNotContain("ladder", "VE-7788", "Sil ", "hold point", "Step ", "boom")
                .doesNotContainIgnoringCase("safe");
        assertThat(get(report + "/customer").getResponse().getContentAsByteArray())
                .isEqualTo(pdf);
    }

    @Test
    void aReportIsKeptOnceAmongThePapersWithItsHash() throws Exception {
        taps.close(pm, project);
        for (int i = 0; i < 2; i++) {
            assertThat(mvc.post()
                            .uri(report + "/utility")
                            .with(world.signedIn(pm))
                            .with(csrf()))
                    .hasStatus3xxRedirection();
        }
        Document kept = page();
        assertThat(kept.text()).contains("kept among the papers");
        assertThat(kept.select("code").text()).matches("[0-9a-f]{64}");
        assertThat(get("/projects/" + project + "/papers")).bodyText().contains("Alder Lane 12: 2 papers");
    }
}
