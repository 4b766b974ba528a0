package org.plumbrow.cutover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.List;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The pages around a project's outage, as people click through them. */
@PlumbrowTest
class OutagePagesTest {

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    OutageRecords records;

    @Autowired
    Outages outages;

    private Ground ground;
    private UUID project;
    private Visitor pm;

    @BeforeEach
    void aDairy() {
        ground = fixture.ground();
        project = fixture.dairy(ground);
        pm = ground.branch().projectManager();
    }

    private MvcTestResult get(String suffix) {
        return pages.get(pm, "/projects/" + project + suffix);
    }

    private MvcTestResult post(String suffix, String... fields) {
        return pages.post(pm, "/projects/" + project + suffix, fields);
    }

    private static Document page(MvcTestResult answer) {
        return TestPages.read(answer);
    }

    private long version() {
        return world.as(pm, () -> outages.live(project).orElseThrow().version());
    }

    @Test
    void thePageNamesTheBestDayAndWhatRulesOthersOut() {
        MvcTestResult answer = get("/outage");
        assertThat(answer).hasStatusOk();
        Document page = page(answer);
        assertThat(page.select("h1").text()).isEqualTo("Outage window: Tuesday, March 16 fits best");
        assertThat(page.select("h1")).hasSize(1);
        assertThat(page.text()).contains("Ruled out: 11 days, and why");
        assertThat(page.text()).contains("Mon, Mar 1 to Mon, Mar 15: The utility needs 10 full working days.");
        assertThat(page.select("[style]")).isEmpty();
    }

    @Test
    void thePageTakesAFixedNumberOfQueries() {
        get("/outage");
        assertThat(Queries.count(() -> assertThat(get("/outage")).hasStatusOk()))
                .isLessThanOrEqualTo(25);
    }

    @Test
    void choosingShowsTheLettersAndBookingWritesThem() {
        Document choose = page(get("/outage/choose?window=2027-03-26"));
        assertThat(choose.select("input[name=day]").val()).isEqualTo("2027-03-26");
        assertThat(choose.select("input[name=start]").val()).isEqualTo("09:00");
        assertThat(choose.text())
                .contains("Outage request: Friday, March 26, 9:00 am to 10:30 am")
                .contains("Your power will be off on Friday, March 26, from 9:00 am to about 10:30 am.");
        MvcTestResult booked = post(
                "/outage/choose",
                "act",
                "book",
                "day",
                "2027-03-26",
                "start",
                "09:00",
                "outageMinutes",
                "120",
                "crewId",
                ground.crewId().toString(),
                "rainDay",
                "2027-03-30",
                "rainStart",
                "09:00",
                "version",
                "");
        assertThat(booked).hasStatus3xxRedirection();
        assertThat(page(get("/outage")).select("h1").text()).isEqualTo("Power off Fri, Mar 26, 9:00 am to 11:00 am");
        assertThat(page(get("/outage")).text()).contains("The notice to the utility has not left");
    }

    @Test
    void aWordInTheMinutesIsStillThereAndTheMessageIsAtTheField() {
        MvcTestResult answer = post(
                "/outage/choose",
                "act",
                "book",
                "day",
                "2027-03-26",
                "start",
                "09:00",
                "outageMinutes",
                "two hours",
                "crewId",
                ground.crewId().toString(),
                "rainDay",
                "2027-03-30",
                "rainStart",
                "09:00",
                "version",
                "");
        assertThat(answer).hasStatus(422);
        Document page = page(answer);
        assertThat(page.select("input[name=outageMinutes]").val()).isEqualTo("two hours");
        assertThat(page.select("input[name=day]").val()).isEqualTo("2027-03-26");
        assertThat(page.select("input[name=rainStart]").val()).isEqualTo("09:00");
        assertThat(page.select("#outageMinutes-wrong").text())
                .isEqualTo("Write the minutes as a whole number from 15 to 720.");
    }

    @Test
    void everyFieldThatIsMissingIsNamed() {
        Document page = page(post("/outage/choose", "act", "book"));
        assertThat(page.select(".note-trouble li")).hasSize(4);
    }

    @Test
    void aDayTooSoonIsRefusedWithTheLastDayForTheNotice() {
        Document page = page(post(
                "/outage/choose",
                "act",
                "book",
                "day",
                "2027-03-10",
                "start",
                "09:00",
                "outageMinutes",
                "90",
                "crewId",
                ground.crewId().toString()));
        assertThat(page.select("#day-wrong").text())
                .isEqualTo(
                        "The utility needs 10 full working days. For Wed, Mar 10 the notice must leave by Tue, Feb 23.");
    }

    @Test
    void movingAnOlderWindowShowsTheirsBesideYours() {
        fixture.booked(ground, project);
        long opened = version();
        world.as(pm, () -> records.utilityConfirms(project, "VE-77"));
        MvcTestResult answer = post(
                "/outage/choose",
                "act",
                "move",
                "day",
                "2027-03-29",
                "start",
                "10:00",
                "outageMinutes",
                "90",
                "crewId",
                ground.crewId().toString(),
                "reason",
                "Crew ill",
                "version",
                Long.toString(opened));
        assertThat(answer).hasStatus(409);
        assertThat(page(answer).text()).contains("Theirs: Fri, Mar 26").contains("Yours: Mon, Mar 29");
        assertThat(page(answer).select("input[name=reason]").val()).isEqualTo("Crew ill");
    }

    @Test
    void cancellingAsksForTheReasonOnAPageOfItsOwn() {
        fixture.noticeGiven(ground, project);
        Document page = page(get("/outage/cancel"));
        assertThat(page.select("h1").text()).isEqualTo("Cancel the outage of Fri, Mar 26?");
        assertThat(page.text()).contains("Cancelled: no power cut on Friday, March 26");
        assertThat(post("/outage/cancel", "reason", "", "version", Long.toString(version())))
                .hasStatus(422);
        assertThat(post("/outage/cancel", "reason", "Roof first", "version", Long.toString(version())))
                .hasStatus3xxRedirection();
        assertThat(page(get("/outage")).text()).contains("Roof first");
    }

    @Test
    void whatTheUtilityAndTheCustomerSayIsWrittenDown() {
        fixture.booked(ground, project);
        assertThat(post("/outage/utility", "how", "", "number", "")).hasStatus(422);
        assertThat(post("/outage/utility", "how", "through the portal", "toldOn", "2027-03-01", "number", "VE-77"))
                .hasStatus3xxRedirection();
        assertThat(post("/outage/customer", "how", "in person", "answer", "AGREED", "note", "fine"))
                .hasStatus3xxRedirection();
        Document page = page(get("/outage"));
        assertThat(page.text()).contains("VE-77").contains("through the portal").contains("agrees to the day");
        assertThat(page.text()).doesNotContain("has not confirmed");
    }

    @Test
    void whatWasTypedOfTellingAndOfTheWorkIsStillThereWhenItIsRefused() {
        fixture.booked(ground, project);
        String tooLong = "by letter and ".repeat(40);
        for (String whom : List.of("utility", "customer")) {
            assertThat(post("/outage/" + whom, "how", tooLong, "toldOn", "2027-03-01"))
                    .hasStatus(422)
                    .bodyText()
                    .contains("Write how, for example", tooLong.strip());
            assertThat(post("/outage/" + whom, "how", "by letter", "toldOn", "2027-03-02"))
                    .hasStatus(422)
                    .bodyText()
                    .contains("That day is still to come.", "by letter");
            assertThat(post("/outage/" + whom, "how", "by letter", "toldOn", "1850-01-01"))
                    .hasStatus(422)
                    .bodyText()
                    .contains("That day is more than a year ago.", "1850-01-01");
        }
        assertThat(post("/outage/work", "meters", "two", "plannedMinutes", "90", "version", "0"))
                .hasStatus(422)
                .bodyText()
                .contains("Write how many meters are opened, 1 to 12.", "value=\"two\"", "value=\"90\"");
    }

    @Test
    void aBlackoutIsAddedTakenOutAndPutBack() {
        assertThat(post("/outage/blackouts", "reason", "milking", "weekdays", "MONDAY", "from", "12:00"))
                .hasStatus(422);
        assertThat(post("/outage/blackouts", "reason", "milking", "weekdays", "MONDAY", "from", "12:00", "to", "15:00"))
                .hasStatus3xxRedirection();
        Document page = page(get("/outage/blackouts"));
        assertThat(page.text()).contains("every week, Monday, noon to 3:00 pm: milking");
        String end = page.select("form[action$=/end]").attr("action");
        assertThat(mvc.post().uri(end).with(world.signedIn(pm)).with(csrf())).hasStatus3xxRedirection();
        assertThat(page(get("/outage/blackouts")).text()).doesNotContain("milking, noon");
        assertThat(mvc.post()
                        .uri(end.replace("/end", "/restore"))
                        .with(world.signedIn(pm))
                        .with(csrf()))
                .hasStatus3xxRedirection();
        assertThat(page(get("/outage/blackouts")).text()).contains("noon to 3:00 pm: milking");
    }

    @Test
    void otherWorkMeansOtherMinutes() {
        assertThat(post("/outage/work", "parts", "mainPanel", "meters", "1", "version", "0"))
                .hasStatus3xxRedirection();
        assertThat(page(get("/outage")).text()).contains("new main panel");
        MvcTestResult older = post("/outage/work", "parts", "oldGear", "meters", "2", "version", "0");
        assertThat(older).hasStatus(409);
        assertThat(post("/outage/work", "meters", "13", "version", "1")).hasStatus(422);
    }

    @Test
    void aCrewLeadWhoIsNotBookedHereIsToldSo() {
        assertThat(pages.get(ground.branch().crewLead(), "/projects/" + project + "/outage"))
                .hasStatus(403);
    }
}
