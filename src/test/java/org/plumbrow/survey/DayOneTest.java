package org.plumbrow.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.time.LocalDate;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.project.JournalReader;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.ScheduleFixture;
import org.plumbrow.survey.SurveyFacts.Occasion;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

/** The lead of the crew that is booked reads the horizon again on day one, and nothing else of the survey. */
@PlumbrowTest
class DayOneTest {

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    Surveys surveys;

    private TestBranch branch;
    private UUID dairy;

    @BeforeEach
    void aBookedCrew() {
        branch = world.branch();
        schedule.crew(
                branch,
                "Crew 1",
                branch.crewLead().personId(),
                Skill.INSTALLER,
                Skill.POST_OPERATOR,
                Skill.EARTH_OPERATOR,
                Skill.BORE_OPERATOR);
        schedule.crew(branch, "Crew 2", null, Skill.ELECTRICIAN, Skill.SERVICE);
        schedule.machine(branch, "Yellow driver", EquipmentKind.POST_DRIVER);
        dairy = projects.aDairyGroundMount().in(branch).build();
        schedule.reach(branch, dairy, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
        schedule.planned(branch);
    }

    private Document page(String part) {
        MvcTestResult answer = pages.get(branch.crewLead(), "/projects/" + dairy + "/survey/" + part);
        assertThat(answer).hasStatusOk();
        return TestPages.read(answer);
    }

    private MvcTestResult save(String part, String... fields) {
        var request = mvc.post()
                .uri("/projects/" + dairy + "/survey/" + part)
                .param("version", "0")
                .with(world.signedIn(branch.crewLead()))
                .with(csrf());
        for (int at = 0; at < fields.length; at += 2) {
            request.param(fields[at], fields[at + 1]);
        }
        return request.exchange();
    }

    @Test
    void theLeadHasTheFormOfDayOneAndOnlyReadsTheOthers() {
        Document page = page("day-one");
        assertThat(page.select("h1").text()).startsWith("Shade on day one");
        assertThat(page.select("form#survey-form input[name^=h_]")).hasSize(17);
        assertThat(page.select("a[href$=/shade]").eachAttr("href"))
                .containsExactly("/projects/" + dairy + "/survey/shade");
        assertThat(page("shade").select("form#survey-form")).isEmpty();
    }

    @Test
    void whatTheLeadReadsIsKeptBesideTheReadingBeforeAndStandsInTheJournal(@Autowired JournalReader journal)
            throws Exception {
        assertThat(save("day-one", "h_90", "14", "h_105", "15.5")).hasStatus3xxRedirection();
        SurveyFacts facts = world.as(branch.designer(), () -> surveys.facts(dairy));
        assertThat(facts.horizon(Occasion.DAY_ONE))
                .extracting(SurveyFacts.HorizonReading::elevationDeg)
                .containsExactly(14.0, 15.5);
        assertThat(facts.horizon(Occasion.BEFORE)).isEmpty();
        assertThat(page("day-one").getElementById("h_105").val()).isEqualTo("15.5");
        assertThat(world.as(branch.manager(), () -> journal.newest(dairy, 1))
                        .get(0)
                        .sentence())
                .startsWith("Survey, shade on day one: ");
    }

    @Test
    void whatIsNoAngleIsRefusedAndTheReadingBeforeIsNotTheLeadsToChange() {
        assertThat(save("day-one", "h_90", "as high as the silo")).hasStatus(422);
        assertThat(save("shade", "h_90", "14")).hasStatus(403);
    }
}
