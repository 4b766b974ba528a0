package org.plumbrow.schedule.whichdate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.UnsupportedEncodingException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

@PlumbrowTest
class WhichDatePagesTest {

    private static final String ASKED = "/look-ahead/which-date?mounting=GROUND&kwDc=99&trenchFt=400";
    private static final Pattern HEADING =
            Pattern.compile("<h1>Signed today, the system is on by (.*) in four runs of five</h1>");
    private static final DateTimeFormatter WRITTEN = DateTimeFormatter.ofPattern("EEE, MMM d, yyyy", Locale.US);

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    JdbcClient owner;

    TestBranch branch;

    @BeforeEach
    void aBranch() {
        branch = world.branch();
        schedule.crew(branch, "Crew 1");
        schedule.machine(branch, "Post driver", EquipmentKind.POST_DRIVER);
    }

    @Test
    void beforeAnybodyAskedThereIsOnlyTheQuestion() {
        assertThat(page("/look-ahead/which-date"))
                .hasStatusOk()
                .bodyText()
                .contains("<h1>Which date can be promised to who signs today?</h1>")
                .doesNotContain("The way there");
    }

    @Test
    void theHeadingIsTheDateInFourRunsOfFive() {
        assertThat(page(ASKED))
                .hasStatusOk()
                .bodyText()
                .containsPattern(HEADING)
                .contains("No promise breaks that would hold without it");
    }

    @Test
    void theSameQuestionHasTheSameAnswerAndMoreOfTheSameJobIsOnLater() {
        assertThat(fourInFive("&kwDc=400")).isEqualTo(fourInFive("&kwDc=400"));
        assertThat(fourInFive("&kwDc=10")).isBefore(fourInFive("&kwDc=2000"));
    }

    @Test
    void whatCannotBeReadIsSaidAtItsFieldAndStillThere() {
        assertThat(page("/look-ahead/which-date?mounting=GROUND&kwDc=ninety&trenchFt=60000&utility=Aldermere"))
                .hasStatus(422)
                .bodyText()
                .contains("value=\"ninety\"")
                .contains("value=\"60000\"")
                .contains("Choose one of the list.");
        assertThat(page("/look-ahead/which-date?mounting=&kwDc="))
                .hasStatus(422)
                .bodyText()
                .contains("Choose how the array is mounted.")
                .contains("Write the size as a number from");
    }

    @Test
    void withoutACrewThatCanDoItThereIsNoDate() {
        TestBranch empty = world.branch();
        assertThat(pages.get(empty.manager(), ASKED))
                .hasStatusOk()
                .bodyText()
                .contains("No date: no crew of this branch can do some of this work");
    }

    @Test
    void nothingIsStoredAndTheNumberOfQueriesDoesNotGrowWithTheProjects() {
        aProject("First");
        schedule.planned(branch);
        int projectsBefore = count("project");
        int plansBefore = count("plan");
        int withOne = Queries.count(() -> page(ASKED));
        assertThat(count("project")).isEqualTo(projectsBefore);
        assertThat(count("plan")).isEqualTo(plansBefore);
        for (int more = 0; more < 4; more++) {
            aProject("More " + more);
        }
        schedule.planned(branch);
        assertThat(Queries.count(() -> page(ASKED))).isEqualTo(withOne);
    }

    private LocalDate fourInFive(String size) {
        String body = text(page("/look-ahead/which-date?mounting=GROUND" + size));
        Matcher heading = HEADING.matcher(body);
        assertThat(heading.find()).as(body).isTrue();
        return LocalDate.parse(heading.group(1), WRITTEN);
    }

    private static String text(MvcTestResult answer) {
        try {
            return answer.getResponse().getContentAsString();
        } catch (UnsupportedEncodingException never) {
            throw new IllegalStateException(never);
        }
    }

    private int count(String table) {
        return world.as(
                branch.manager(),
                () -> owner.sql("select count(*) from " + table)
                        .query(Integer.class)
                        .single());
    }

    private void aProject(String name) {
        UUID project = projects.aDairyGroundMount()
                .named(name)
                .promised(Milestone.SYSTEM_ON, LocalDate.of(2027, 7, 30))
                .in(branch)
                .build();
        schedule.reach(branch, project, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
    }

    private MvcTestResult page(String address) {
        return pages.get(branch.manager(), address);
    }
}
