package org.plumbrow.cutover.daylog;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestClock;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** Who is on site on the day, who may sign, and what went well by luck only. Every form as it is sent without a script. */
@PlumbrowTest
class PeopleOnSiteTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    TestClock clock;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    DayTaps taps;

    private Visitor pm;
    private UUID home;

    @BeforeEach
    void aLogBeforeItsFirstHoldPoint() {
        Ground ground = fixture.ground();
        pm = ground.branch().projectManager();
        home = fixture.noticeGiven(ground, fixture.home(ground));
        clock.standAt("2027-03-26T12:00:00Z");
        taps.upTo(pm, home, "3");
    }

    private MvcTestResult post(String suffix, String... fields) {
        return pages.post(pm, "/projects/" + home + "/day-log" + suffix, fields);
    }

    private Document page(String suffix) {
        return page(pages.get(pm, "/projects/" + home + "/day-log" + suffix));
    }

    private static Document page(MvcTestResult answer) {
        return TestPages.read(answer);
    }

    @Test
    void whoComesAndLeavesStandsWithRoleAndTime() {
        assertThat(page("/people").text()).contains("Tamsin, person in charge");
        assertThat(post("/people", "name", "Perrin", "role", "utility’s technician", "at", ""))
                .hasStatus3xxRedirection();
        assertThat(page("/people").text()).contains("Perrin, utility’s technician since 8:12 am");
        String left = page("/people").select("form[action$=/left]").attr("action");
        String suffix = left.substring(left.indexOf("/day-log") + "/day-log".length());
        assertThat(post(suffix, "left", "07:00")).as("before they came").hasStatus(422);
        assertThat(post(suffix, "left", "seven")).hasStatus(422);
        assertThat(post(suffix, "left", "")).hasStatus3xxRedirection();
        assertThat(page("/people").text()).contains("8:12 am to 8:12 am");
        assertThat(post(suffix, "left", "")).as("left already").hasStatus(409);
    }

    @Test
    void badInputStaysTypedAndSaysWhatToDo() {
        MvcTestResult answer = post("/people", "name", "P", "role", "", "at", "25:99");
        assertThat(answer).hasStatus(422);
        answer = post("/people", "name", "P", "role", "", "at", "");
        assertThat(page(answer).text())
                .contains("Write the name, 2 to 120 characters.")
                .contains("Write what they are here");
        assertThat(page(answer).select("#r-name").val()).isEqualTo("P");
        post("/people", "name", "Perrin", "role", "owner", "at", "");
        assertThat(page(post("/people", "name", " perrin ", "role", "owner", "at", ""))
                        .text())
                .contains("perrin is on the list already.");
    }

    @Test
    void whoSignsIsAmongThePeopleOnSite() {
        assertThat(post("/holds/H1/sign", "part", "PERSON_IN_CHARGE", "name", "Tamsin", "trade", "person in charge"))
                .hasStatus3xxRedirection();
        MvcTestResult stranger = post("/holds/H1/sign", "part", "CUSTOMER", "name", "Perrin", "trade", "owner");
        assertThat(stranger).hasStatus(422);
        assertThat(page(stranger).text()).contains("Perrin is not among the people on site (Tamsin).");
        assertThat(page(stranger).select("#r-isHere")).hasSize(1);
        post("/people", "name", "Perrin", "role", "owner", "at", "");
        assertThat(post("/holds/H1/sign", "part", "CUSTOMER", "name", "perrin", "trade", "owner"))
                .hasStatus3xxRedirection();
    }

    @Test
    void whoIsSaidToBeHereIsWrittenDownWithTheSignature() {
        post("/holds/H1/sign", "part", "PERSON_IN_CHARGE", "name", "Tamsin", "trade", "person in charge");
        assertThat(post("/holds/H1/sign", "part", "CUSTOMER", "name", "Perrin", "trade", "owner", "isHere", "yes"))
                .hasStatus3xxRedirection();
        assertThat(page("/people").text()).contains("Perrin, owner since");
    }

    @Test
    void aNearMissIsItsOwnThingBesideWhatIsWrong() {
        MvcTestResult half = post("/near-miss", "happened", "a lug fell", "couldHave", "", "done", "");
        assertThat(half).hasStatus(422);
        assertThat(page(half).select("#r-happened").text()).isEqualTo("a lug fell");
        assertThat(page(half).text())
                .contains("Write what could have happened")
                .contains("Write what was done about it");
        assertThat(post("/near-miss", "happened", "a lug fell", "couldHave", "a short", "done", "a tray for parts"))
                .hasStatus3xxRedirection();
        assertThat(page("/near-miss").text())
                .contains("a lug fell")
                .contains("What could have happened a short")
                .contains("a tray for parts");
        assertThat(page("").text()).contains("near miss: a lug fell");
    }
}
