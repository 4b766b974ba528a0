package org.plumbrow.cutover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.cutover.daylog.CutoverRoad;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;

/** The place of all cutovers. */
@PlumbrowTest
class CutoversPageTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    CutoverRoad road;

    private Document page(Visitor visitor) {
        var answer = pages.get(visitor, "/cutovers");
        assertThat(answer).hasStatusOk();
        return TestPages.read(answer);
    }

    @Test
    void anEmptyBranchIsToldWhatWillStandHere() {
        Ground ground = fixture.ground();
        Document page = page(ground.branch().projectManager());
        assertThat(page.select("h1").text()).isEqualTo("No outage is set");
        assertThat(page.text()).contains("No cutover is done yet.");
    }

    @Test
    void theNextOneComesFirstWithWhatItLacksAndPastOnesWithTheirMinutes() {
        Ground ground = fixture.ground();
        fixture.noticeGiven(ground, fixture.dairy(ground));
        UUID past = fixture.home(ground);
        road.prepare(ground.branch(), past);
        Document page = page(ground.branch().projectManager());
        assertThat(page.select("h1").text()).isEqualTo("Next power off: Sedge Hollow Dairy, Fri, Mar 26 (in 25 days)");
        assertThat(page.text()).contains("The utility has not confirmed and one more");
        assertThat(page.select("a[href*=/day-log/of/]").text()).contains("Alder Lane 12");
    }

    @Test
    void theListTakesTheSameQueriesForOneAndForTen() {
        Ground few = fixture.ground();
        fixture.booked(few, fixture.dairy(few));
        page(few.branch().projectManager());
        int one = Queries.count(() -> page(few.branch().projectManager()));
        for (int i = 0; i < 3; i++) {
            road.prepare(few.branch(), fixture.home(few));
        }
        assertThat(Queries.count(() -> page(few.branch().projectManager())))
                .isEqualTo(one)
                .isLessThanOrEqualTo(5);
    }

    @Test
    void aCrewLeadSeesOnlyWhereTheOwnCrewIsBooked() {
        Ground ground = fixture.ground();
        fixture.booked(ground, fixture.dairy(ground));
        assertThat(page(ground.branch().crewLead()).text()).doesNotContain("Sedge Hollow");
    }
}
