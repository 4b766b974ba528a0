package org.plumbrow.cutover.ridethrough;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.UUID;
import org.assertj.core.data.Offset;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** A pasted forecast: read, kept, refused with its line. */
@PlumbrowTest
class ForecastTest {

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    CutoverFixture fixture;

    @Test
    void aLineAnHourIsReadInItsUnits() {
        var hours = ForecastText.read("time,air,humidity,gust,rain,lightning\n2027-03-16 09:00, 50, 70, 25, 10\n");
        var hour = hours.get(LocalDateTime.of(2027, 3, 16, 9, 0));
        assertThat(hour.airC()).isEqualTo(10, Offset.offset(1e-9));
        assertThat(hour.gustMPerS()).isEqualTo(11.176, Offset.offset(1e-9));
        assertThat(hour.rainPercent()).hasValue(10);
        assertThat(hour.lightningPercent()).isEmpty();
    }

    @Test
    void whatCannotBeReadNamesItsLine() {
        assertThatThrownBy(() -> ForecastText.read("2027-03-16 09:00,50,70,12\n2027-03-16 10:30,50,70,12"))
                .hasMessage("Line 2: a line begins at a full hour.");
        assertThatThrownBy(() -> ForecastText.read("2027-03-16 09:00,warm,70,12"))
                .hasMessageContaining("“warm”");
    }

    @Test
    void itIsKeptRefusedInWordsAndNeverOverwritesAnother() {
        CutoverFixture.Ground ground = fixture.ground();
        UUID project = fixture.dairy(ground);
        Visitor pm = ground.branch().projectManager();
        assertThat(paste(project, pm, "2027-03-16 nine,50,70,12", -1)).hasStatus(422);
        assertThat(paste(project, pm, "2027-03-16 09:00,50,70,12,10,0", -1)).hasStatus3xxRedirection();
        MvcTestResult older = paste(project, pm, "2027-03-16 09:00,40,70,12,10,0", -1);
        assertThat(older).hasStatus(409);
    }

    /** With the mark that some programs put before UTF-8. What is wrong in it can be put right in the field. */
    @Test
    void aFileTakesThePlaceOfWhatStandsInTheField() {
        CutoverFixture.Ground ground = fixture.ground();
        UUID project = fixture.dairy(ground);
        Visitor pm = ground.branch().projectManager();
        MvcTestResult wrong = file(project, pm, "2027-03-16 09:00,50,70,12\n2027-03-16 10:00,50,damp,12", -1);
        assertThat(wrong).hasStatus(422);
        Document page = TestPages.read(wrong);
        assertThat(page.select("#text-wrong").text()).startsWith("Line 2:");
        assertThat(page.select("textarea[name=text]").text()).contains("10:00,50,damp");
        assertThat(file(project, pm, "\uFEFF2027-03-16 09:00,50,70,12\n", -1)).hasStatus3xxRedirection();
    }

    private MvcTestResult file(UUID project, Visitor pm, String text, long version) {
        return mvc.post()
                .uri("/projects/" + project + "/outage/forecast")
                .multipart()
                .file(new MockMultipartFile("file", "hours.csv", "text/csv", text.getBytes(StandardCharsets.UTF_8)))
                .param("text", "what stood there")
                .param("version", Long.toString(version))
                .with(world.signedIn(pm))
                .with(csrf())
                .exchange();
    }

    private MvcTestResult paste(UUID project, Visitor pm, String text, long version) {
        return pages.post(
                pm, "/projects/" + project + "/outage/forecast", "text", text, "version", Long.toString(version));
    }
}
