package org.plumbrow.schedule.projectdates;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.UUID;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.ScheduleFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The page of one activity: what cannot be is refused at its field, what somebody else was faster at is shown beside yours. */
@PlumbrowTest
class ActivityPagesTest {

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    private TestBranch branch;
    private String page;

    @BeforeEach
    void aPlannedProject() {
        branch = world.branch();
        schedule.crew(branch, "Crew 1");
        UUID project = projects.aDairyGroundMount().in(branch).build();
        schedule.reach(branch, project, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
        schedule.planned(branch);
        page = "/projects/" + project + "/schedule/racking";
    }

    private String version() {
        Document now = Jsoup.parse(body(pages.get(branch.manager(), page)));
        return now.select("form[action$=/record] input[name=version]").attr("value");
    }

    private MvcTestResult record(Visitor who, String version, String started, String finished, String daysLeft) {
        return pages.post(
                who,
                page + "/record",
                "version",
                version,
                "started",
                started,
                "finished",
                finished,
                "daysLeft",
                daysLeft);
    }

    private MvcTestResult settle(String version, String day, String reason) {
        return pages.post(
                branch.manager(), page + "/fix", "version", version, "day", day, "reason", reason, "lastMove", "0");
    }

    private static String body(MvcTestResult answer) {
        try {
            return answer.getResponse().getContentAsString();
        } catch (java.io.UnsupportedEncodingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String typed(MvcTestResult answer, String form, String field) {
        return Jsoup.parse(body(answer))
                .select("form[action$=/" + form + "] [name=" + field + "]")
                .val();
    }

    @Test
    void workThatLiesAheadIsNotRecordedAndWhatWasTypedStays() {
        MvcTestResult answer = record(branch.manager(), version(), "2027-03-05", "", "3");
        assertThat(answer).hasStatus(422).bodyText().contains("Fri, Mar 5 lies ahead; today is Mon, Mar 1.");
        assertThat(typed(answer, "record", "started")).isEqualTo("2027-03-05");
        assertThat(typed(answer, "record", "daysLeft")).isEqualTo("3");
    }

    @Test
    void doneBeforeItBeganIsRefusedAtItsField() {
        MvcTestResult answer = record(branch.manager(), version(), "2027-02-26", "2027-02-25", "");
        assertThat(answer).hasStatus(422).bodyText().contains("It cannot be done before it began.");
        assertThat(Jsoup.parse(body(answer)).select("[name=finished][aria-invalid=true]"))
                .hasSize(1);
    }

    @Test
    void daysLeftThatAreNoDaysAreRefused() {
        assertThat(record(branch.manager(), version(), "2027-02-26", "", "0")).hasStatus(422);
        MvcTestResult words = record(branch.manager(), version(), "2027-02-26", "", "plenty");
        assertThat(words).hasStatus(422).bodyText().contains("Write the days as a number from 0.5 to 200");
        assertThat(typed(words, "record", "daysLeft")).isEqualTo("plenty");
        assertThat(typed(words, "record", "started")).isEqualTo("2027-02-26");
    }

    @Test
    void aDayThatIsNoneIsAskedForAgainAtItsField() {
        assertThat(settle(version(), "soon", "told the farm"))
                .hasStatus(422)
                .bodyText()
                .contains("Choose a day, for example Mar 8, 2027.", "told the farm");
        assertThat(pages.get(branch.manager(), page + "/effect?day=soon&version=" + version()))
                .hasStatus(422)
                .bodyText()
                .contains("Choose a day, for example Mar 8, 2027.");
    }

    @Test
    void ofTwoWhoRecordAtOnceTheSecondSeesTheFirstsAndKeepsTheOwnWords() {
        String seen = version();
        assertThat(record(branch.manager(), seen, "2027-02-26", "", "4")).hasStatus3xxRedirection();

        MvcTestResult second = record(branch.projectManager(), seen, "2027-02-25", "", "2");

        assertThat(second).hasStatus(409).bodyText().contains("Somebody changed this activity after you opened it.");
        assertThat(typed(second, "record", "started")).isEqualTo("2027-02-25");
        String newer = typed(second, "record", "version");
        assertThat(newer).isNotEqualTo(seen);
        assertThat(record(branch.manager(), newer, "2027-02-25", "", "2")).hasStatus3xxRedirection();
    }

    @Test
    void aStartThatHasPassedOrHasNoReasonIsNotSettled() {
        MvcTestResult past = settle(version(), "2027-02-22", "told the farm");
        assertThat(past).hasStatus(422).bodyText().contains("Mon, Feb 22 has passed; today is Mon, Mar 1.");
        assertThat(settle(version(), "2027-03-15", " "))
                .hasStatus(422)
                .bodyText()
                .contains("Say to whom the start was told, or why it is settled.");
    }

    @Test
    void ofTwoWhoSettleAtOnceTheSecondIsTold() {
        String seen = version();
        assertThat(settle(seen, "2027-03-15", "told the farm")).hasStatus3xxRedirection();
        MvcTestResult second = settle(seen, "2027-03-22", "told the utility");
        assertThat(second)
                .hasStatus(409)
                .bodyText()
                .contains("Somebody moved work or changed this activity after you looked.");
        assertThat(typed(second, "effect", "reason")).isEqualTo("told the utility");
    }
}
