package org.plumbrow.schedule.crewweek;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.time.LocalDate;
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
import org.plumbrow.calc.duration.Skill;
import org.plumbrow.project.ProjectFixture;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.ScheduleFixture;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;

@PlumbrowTest
class CrewWeekTest {

    private static final Pattern FEED = Pattern.compile("http://[^<]*(/c/[0-9a-z]{32}\\.ics)");

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    ProjectFixture projects;

    @Autowired
    ScheduleFixture schedule;

    @Autowired
    MockMvcTester mvc;

    TestBranch branch;
    UUID own;
    UUID other;
    UUID dairy;

    @BeforeEach
    void aPlannedBranch() {
        branch = world.branch();
        own = schedule.crew(
                branch,
                "Crew 1",
                branch.crewLead().personId(),
                Skill.INSTALLER,
                Skill.POST_OPERATOR,
                Skill.EARTH_OPERATOR,
                Skill.BORE_OPERATOR);
        other = schedule.crew(branch, "Crew 2", null, Skill.ELECTRICIAN, Skill.SERVICE);
        schedule.machine(branch, "Yellow driver", EquipmentKind.POST_DRIVER);
        dairy = projects.aDairyGroundMount()
                .named("Sedge Hollow Dairy")
                .in(branch)
                .build();
        schedule.reach(branch, dairy, Stage.PERMITTED, LocalDate.of(2027, 2, 16));
        schedule.planned(branch);
    }

    @Test
    void theLeadSeesWhereToGoWithWhatAndWhomToCall() {
        assertThat(page(branch.crewLead(), "/crews/" + own + "/week?from=2027-03-29"))
                .hasStatusOk()
                .bodyText()
                .contains("Crew 1: Sedge Hollow Dairy")
                .contains("4 Sedge Hollow Road")
                .contains("With: Yellow driver")
                .contains("Perrin Ash, 555-0100")
                .contains("/projects/" + dairy + "/schedule/foundation");
    }

    @Test
    void theLeadLandsAtTheOwnWeekAndMayOpenTheProjectsBookedThere() {
        assertThat(page(branch.crewLead(), "/crews/week")).hasRedirectedUrl("/crews/" + own + "/week");
        assertThat(page(branch.crewLead(), "/projects/" + dairy + "/schedule")).hasStatusOk();
        UUID elsewhere = projects.aHomeRoof().in(branch).build();
        assertThat(page(branch.crewLead(), "/projects/" + elsewhere + "/schedule"))
                .hasStatus(403);
    }

    @Test
    void anotherLeadsWeekIsNotOpenAndAManagerSeesAll() {
        assertThat(page(branch.crewLead(), "/crews/" + other + "/week"))
                .hasStatus(403)
                .bodyText()
                .contains("this crew&#39;s own lead may do this");
        assertThat(page(branch.manager(), "/crews/" + other + "/week")).hasStatusOk();
    }

    @Test
    void theCalendarNamesPlaceAndWorkAndNothingOfTheCustomer() throws Exception {
        String address = makeAddress();
        MvcTestResult answer = mvc.get().uri(address).exchange();
        assertThat(answer).hasStatusOk().hasContentType("text/calendar;charset=UTF-8");
        assertThat(answer.getResponse().getHeader("Cache-Control")).contains("no-store");
        assertThat(answer.getResponse().getHeader("Set-Cookie")).isNull();
        String file = answer.getResponse().getContentAsString();
        assertThat(file.replace("\r\n ", ""))
                .contains("4 Sedge Hollow Road")
                .contains("Driven posts")
                .doesNotContain("Dairy")
                .doesNotContain("Perrin")
                .doesNotContain("555-0100");
        ICalendar calendar = Biweekly.parse(file).first();
        VEvent posts = calendar.getEvents().stream()
                .filter(event -> event.getSummary().getValue().startsWith("Driven posts"))
                .findFirst()
                .orElseThrow();
        // 7:00 am in Eastern daylight time
        assertThat(posts.getDateStart().getValue().toInstant().toString()).endsWith("T11:00:00Z");
    }

    @Test
    void anEndedAddressOpensNothingAndANewOneEndsTheOld() {
        String first = makeAddress();
        String second = makeAddress();
        assertThat(mvc.get().uri(first).exchange()).hasStatus(404).bodyText().contains("This link has ended");
        assertThat(mvc.get().uri(second).exchange()).hasStatusOk();
        assertThat(post("/crews/" + own + "/feed/end")).hasStatus3xxRedirection();
        assertThat(mvc.get().uri(second).exchange()).hasStatus(404);
        assertThat(mvc.get().uri("/c/00000000000000000000000000000000.ics").exchange())
                .hasStatus(404);
    }

    @Test
    void theWeekTakesAsManyQueriesForAFullWeekAsForAnEmptyOneButThoseOfItsPlaces() {
        String empty = "/crews/" + own + "/week?from=2027-12-06";
        page(branch.manager(), empty);
        int without = Queries.count(() -> page(branch.manager(), empty));
        int with = Queries.count(() -> page(branch.manager(), "/crews/" + own + "/week?from=2027-03-29"));
        assertThat(with).isLessThanOrEqualTo(without + 12);
    }

    private String makeAddress() {
        assertThat(post("/crews/" + own + "/feed")).hasStatus3xxRedirection();
        Matcher address = FEED.matcher(bodyOf(page(branch.crewLead(), "/crews/" + own + "/week")));
        assertThat(address.find()).isTrue();
        return address.group(1);
    }

    private static String bodyOf(MvcTestResult answer) {
        try {
            return answer.getResponse().getContentAsString();
        } catch (java.io.UnsupportedEncodingException e) {
            throw new IllegalStateException(e);
        }
    }

    private MvcTestResult page(Visitor visitor, String address) {
        return pages.get(visitor, address);
    }

    private MvcTestResult post(String address) {
        return pages.post(branch.crewLead(), address);
    }
}
