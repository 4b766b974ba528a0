package org.plumbrow.schedule.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.UnsupportedEncodingException;
import java.time.Duration;
import java.time.LocalDate;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.database.BackgroundRuns;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.ScheduleFixture;
import org.springframework.beans.factory.annotation.Autowired;

/** One crew and far too many farms: the search goes on for long, the page follows it, and a manager ends it. */
@PlumbrowTest
class StopTheSearchTest {

    private static final int FARMS = 24;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    BackgroundRuns runs;

    @Test
    void thePageFollowsTheSearchAndStoppingKeepsTheBestPlanSoFar() {
        TestBranch branch = world.branch();
        schedule.crew(branch, "Crew 1");
        schedule.crew(branch, "Crew 2");
        IntStream.range(0, FARMS).forEach(number -> aFarm(branch, number));
        UUID run = schedule.inBranch(branch, () -> runs.start("plan", branch.id(), null, "Ines"));
        await().atMost(Duration.ofSeconds(60))
                .until(() -> page(branch, run).text().contains("best plan so far"));
        Document going = page(branch, run);
        assertThat(going.select("[hx-trigger]").attr("hx-trigger")).isEqualTo("every 1s");
        assertThat(going.text()).contains("half-days late, weighted");
        assertThat(going.select("form[action$=/stop] button").text()).isEqualTo("Stop, this is good enough");
        assertThat(pages.post(
                        branch.manager(), going.select("form[action$=/stop]").attr("action")))
                .hasStatus3xxRedirection();
        await().atMost(Duration.ofSeconds(30))
                .until(() -> page(branch, run).select("form[action$=/stop]").isEmpty());
        assertThat(page(branch, run).text()).contains("Search stopped, the best plan so far is kept.");
    }

    private Document page(TestBranch branch, UUID run) {
        try {
            return Jsoup.parse(
                    pages.get(branch.manager(), "/runs/" + run).getResponse().getContentAsString());
        } catch (UnsupportedEncodingException never) {
            throw new IllegalStateException(never);
        }
    }

    private void aFarm(TestBranch branch, int number) {
        UUID farm = projects.aDairyGroundMount()
                .named("Farm " + number)
                .promised(Milestone.SYSTEM_ON, LocalDate.of(2027, 5, 3).plusDays(3L * number))
                .in(branch)
                .build();
        schedule.reach(branch, farm, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
    }
}
