package org.plumbrow.schedule.why;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.ScheduleFixture;
import org.plumbrow.schedule.plan.Plans;
import org.plumbrow.schedule.plan.Publishing;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** Two dairies, one crew: the second waits for the first, and the page says so and what would change it. */
@PlumbrowTest
class WhyPagesTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    Plans plans;

    @Autowired
    Publishing publishing;

    private TestBranch branch;
    private UUID second;

    @BeforeEach
    void twoProjectsOfOneCrew() {
        branch = world.branch();
        schedule.crew(branch, "Crew 1");
        schedule.machine(branch, "Post driver", EquipmentKind.POST_DRIVER);
        aProject("Alder Farm", LocalDate.of(2027, 5, 28));
        second = aProject("Birch Farm", LocalDate.of(2027, 6, 30));
        schedule.planned(branch);
        world.as(
                branch.manager(),
                () -> plans.draftHead(branch.id()).flatMap(draft -> publishing.publish(draft.branchId(), draft.id())));
    }

    private UUID aProject(String name, LocalDate promised) {
        UUID project = projects.aDairyGroundMount()
                .named(name)
                .promised(Milestone.SYSTEM_ON, promised)
                .in(branch)
                .build();
        schedule.reach(branch, project, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
        return project;
    }

    private MvcTestResult page(UUID project, String key, Visitor who) {
        return pages.get(who, "/projects/" + project + "/schedule/" + key + "/why");
    }

    private Document read(UUID project, String key, Visitor who) {
        MvcTestResult answer = page(project, key, who);
        assertThat(answer).hasStatusOk();
        return TestPages.read(answer);
    }

    @Test
    void theChainGoesFromTodayAcrossTheOtherJobToTheDate() {
        Document racking = read(second, "racking", branch.manager());
        assertThat(racking.selectFirst("h1").text()).startsWith("Why racking, Birch Farm, ends ");
        assertThat(racking.select(".chain li").size()).isGreaterThan(2);
        assertThat(racking.select(".chain li").last().text()).startsWith("Racking, ");
        assertThat(racking.select(".chain").text()).contains(", Alder Farm");
        assertThat(racking.select(".chain svg rect.works")).isNotEmpty();
        assertThat(racking.text())
                .containsPattern("Most of the time goes to .*, Alder Farm.*: \\d+ of the \\d+ days from today")
                .containsPattern("It begins with .*, Alder Farm, which can start at once\\.");
    }

    @Test
    void aSecondCrewIsTriedAndItsGainIsOfTheWholePlan() {
        Document racking = read(second, "racking", branch.manager());
        assertThat(racking.select("section[aria-labelledby=moving] tbody").text())
                .contains("A second crew like Crew 1")
                .containsPattern("\\d+ working days? sooner");
    }

    @Test
    void aDesignerSeesWhyButNotWhatTheBranchCouldChange() {
        Document racking = read(second, "racking", branch.designer());
        assertThat(racking.select(".chain li")).isNotEmpty();
        assertThat(racking.select("section[aria-labelledby=moving]")).isEmpty();
    }

    @Test
    void thePromiseThatAWorkDecidesSaysWhetherItCanBeKeptAndWhatIsProved() {
        String kept = promised(second);
        assertThat(kept)
                .contains("System on, promised for Wed, Jun 30: kept, with ")
                .contains(" to spare.");
        assertThat(read(second, "racking", branch.manager()).select("section[aria-labelledby=promised]"))
                .as("racking decides no promise")
                .isEmpty();
        branch = world.branch();
        schedule.crew(branch, "Crew 1");
        schedule.machine(branch, "Post driver", EquipmentKind.POST_DRIVER);
        UUID hopeless = aProject("Elder Farm", LocalDate.of(2027, 3, 4));
        schedule.planned(branch);
        assertThat(promised(hopeless))
                .contains("System on, promised for Thu, Mar 4: cannot be kept by any plan.")
                .contains("Proved: with every crew and machine free for it alone");
    }

    private String promised(UUID project) {
        return read(project, "commissioning", branch.manager())
                .select("section[aria-labelledby=promised]")
                .text();
    }

    @Test
    void whatCannotHoldTogetherIsNamed() {
        assertThat(read(second, "racking", branch.manager()).select("section[aria-labelledby=clash]"))
                .isEmpty();
        LocalDate sunday = LocalDate.of(2027, 5, 2);
        MvcTestResult settled = pages.post(
                branch.manager(),
                "/projects/" + second + "/schedule/racking/fix",
                "version",
                version(),
                "lastMove",
                "0",
                "day",
                sunday.toString(),
                "half",
                "MORNING",
                "reason",
                "told the farmer");
        assertThat(settled).hasStatus3xxRedirection();
        assertThat(read(second, "racking", branch.manager())
                        .select("section[aria-labelledby=clash]")
                        .text())
                .contains("Birch Farm, racking is settled on Sun, May 2")
                .contains("Nobody works on Sun, May 2")
                .contains("Changing any one of them is enough");
    }

    private String version() {
        MvcTestResult page = pages.get(branch.manager(), "/projects/" + second + "/schedule/racking");
        return TestPages.read(page).select("[name=version]").val();
    }

    @Test
    void whatIsDoneOrHasNoDateSaysSo() {
        assertThat(read(second, "survey", branch.manager()).selectFirst("h1").text())
                .isEqualTo("Site survey, Birch Farm: done, nothing moves it any more");
        assertThat(read(second, "survey", branch.manager()).text()).contains("It was finished on ");
        assertThat(page(second, "no-such-work", branch.manager())).hasStatus(404);
    }

    @Test
    void theNumberOfQueriesDoesNotGrowWithTheProjects() {
        int withTwo = Queries.count(() -> page(second, "racking", branch.manager()));
        for (int more = 0; more < 4; more++) {
            aProject("More " + more, LocalDate.of(2027, 8, 30));
        }
        schedule.planned(branch);
        assertThat(Queries.count(() -> page(second, "racking", branch.manager())))
                .isEqualTo(withTwo);
    }
}
