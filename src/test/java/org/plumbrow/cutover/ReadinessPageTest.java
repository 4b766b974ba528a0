package org.plumbrow.cutover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.cutover.ridethrough.LoadKind;
import org.plumbrow.cutover.ridethrough.SiteLoads;
import org.plumbrow.design.part.Cells;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The day before an outage: what is missing, what is red, and who said go. */
@PlumbrowTest
class ReadinessPageTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    OutageRecords records;

    @Autowired
    SiteLoads loads;

    private UUID project;
    private Visitor pm;

    @BeforeEach
    void aDairyWithItsNotices() {
        Ground ground = fixture.ground();
        project = fixture.noticeGiven(ground, fixture.dairy(ground));
        pm = ground.branch().projectManager();
    }

    private MvcTestResult get(String suffix) {
        return pages.get(pm, "/projects/" + project + "/outage/readiness" + suffix);
    }

    private MvcTestResult post(String suffix, String... fields) {
        return pages.post(pm, "/projects/" + project + "/outage/readiness" + suffix, fields);
    }

    private static Document page(MvcTestResult answer) {
        return TestPages.read(answer);
    }

    private String h1() {
        return page(get("")).select("h1").text();
    }

    private void everythingIsSaid() {
        world.as(pm, () -> {
            records.utilityConfirms(project, "VE-77");
            records.customerAnswers(project, true, "");
            loads.keep(
                    project,
                    LoadKind.HOME,
                    -1,
                    List.of(new Cells(Map.of("medical", "no", "refrigerator", "yes", "freezer", "FULL"))));
        });
        for (ReadyItem item : ReadyItem.values()) {
            post("/" + item.slug(), "state", "READY", "note", "", "version", "-1");
        }
    }

    @Test
    void whatIsMissingIsListedAndNothingSaysGo() {
        Document page = page(get(""));
        assertThat(page.select("h1").text()).isEqualTo("Not yet: Friday, March 26, 9:00 am");
        assertThat(page.text())
                .contains("The utility has not confirmed.")
                .contains("nobody has said")
                .contains("It never means that equipment may be touched");
        assertThat(page.text().toLowerCase(Locale.ROOT)).doesNotContain("safe");
    }

    @Test
    void goIsRefusedWhileAnythingIsMissingAndNamesIt() {
        MvcTestResult answer = post("", "decision", "GO", "person", "Tamsin, person in charge", "reason", "");
        assertThat(answer).hasStatus(422);
        assertThat(page(answer).text()).contains("Not ready yet, so no go: ").contains("Locks and tags");
        assertThat(page(answer).select("input[name=person]").val()).isEqualTo("Tamsin, person in charge");
    }

    @Test
    void goIsSaidByANamedPersonAndFallsWhenSomethingTurnsRed() {
        everythingIsSaid();
        assertThat(h1()).startsWith("Everything asked is answered; a person decides");
        assertThat(post("", "decision", "GO", "person", "Tamsin, person in charge", "reason", ""))
                .hasStatus3xxRedirection();
        assertThat(h1()).isEqualTo("Go was said: Friday, March 26, 9:00 am");
        assertThat(page(get("")).text()).contains("Go, says Tamsin, person in charge");
        post("/parts", "state", "WRONG", "note", "lugs do not fit", "version", "0");
        assertThat(h1()).startsWith("No-go as things stand");
        assertThat(page(get("")).text()).contains("It no longer holds");
    }

    @Test
    void aCustomerWhoSaysNoIsRed() {
        world.as(pm, () -> records.customerAnswers(project, false, "the vet comes"));
        assertThat(h1()).startsWith("No-go as things stand");
        assertThat(page(post("", "decision", "GO", "person", "Tamsin", "reason", ""))
                        .text())
                .contains("Red, so no go: Customer agrees.");
    }

    @Test
    void somethingWrongNeedsItsReasonAndAnOlderPageShowsTheirs() {
        MvcTestResult silent = post("/locks", "state", "WRONG", "note", "", "version", "-1");
        assertThat(silent).hasStatus(422);
        assertThat(page(silent).text()).contains("Write why in a few words.");
        post("/locks", "state", "READY", "note", "looked with Jory", "version", "-1");
        MvcTestResult older = post("/locks", "state", "WRONG", "note", "tag missing", "version", "-1");
        assertThat(older).hasStatus(409);
        assertThat(page(older).text()).contains("looked with Jory").contains("tag missing");
    }

    @Test
    void noGoNeedsAReason() {
        assertThat(post("", "decision", "NO_GO", "person", "Tamsin", "reason", ""))
                .hasStatus(422);
        assertThat(post("", "decision", "NO_GO", "person", "Tamsin", "reason", "storm"))
                .hasStatus3xxRedirection();
        assertThat(h1()).startsWith("No-go as things stand");
    }

    @Test
    void thePageTakesAFixedNumberOfQueries() {
        get("");
        assertThat(Queries.count(() -> assertThat(get("")).hasStatusOk())).isLessThanOrEqualTo(40);
    }
}
