package org.plumbrow.cutover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.PlumbrowTest;
import org.plumbrow.Queries;
import org.plumbrow.TestPages;
import org.plumbrow.TestWorld;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.crew.CrewSamples;
import org.plumbrow.cutover.CutoverFixture.Ground;
import org.plumbrow.cutover.ridethrough.LoadKind;
import org.plumbrow.cutover.ridethrough.SiteLoads;
import org.plumbrow.database.BranchWall;
import org.plumbrow.database.Ids;
import org.plumbrow.design.part.Cells;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;

/** The hours in which the power can be off: ranked, opened, and what would have to give where there is none. */
@PlumbrowTest
class OutageHoursPageTest {

    /** Milked at five in the morning and at five in the afternoon. */
    private static final Cells TANK = new Cells(Map.of(
                    "fullLb", "12900", "milkLb", "6400", "milkF", "38", "roomF", "72", "from1", "05:00", "to1", "07:00",
                    "from2", "17:00", "to2", "19:00", "afterF", "50"))
            .with("coolingF", "20");

    private static final Cells SCHOOL = new Cells(
            Map.of("mark", "school", "what", "BUSINESS", "weekdays", "DAILY", "from", "09:00", "to", "16:00"));

    @Autowired
    TestWorld world;

    @Autowired
    TestPages pages;

    @Autowired
    CutoverFixture fixture;

    @Autowired
    SiteLoads loads;

    @Autowired
    CrewSamples samples;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private Ground ground;
    private UUID project;
    private Visitor pm;

    @BeforeEach
    void aDairy() {
        ground = fixture.ground();
        project = fixture.dairy(ground);
        pm = ground.branch().projectManager();
    }

    private void write(LoadKind kind, Cells... rows) {
        world.as(
                pm,
                () -> assertThat(loads.keep(project, kind, -1, List.of(rows))).isEmpty());
    }

    private MvcTestResult get(String suffix) {
        return pages.get(pm, "/projects/" + project + suffix);
    }

    private Document page(String suffix) {
        return TestPages.read(get(suffix));
    }

    @Test
    void aFarmOnWhichNothingIsWrittenGetsNoChance() {
        Document page = page("/outage/hours");
        assertThat(page.text())
                .contains("Nobody has written down what suffers on this site")
                .contains("not given")
                .doesNotContain("of 100");
    }

    @Test
    void aDairysHoursKeepClearOfTheMilkingsAndLeadIntoTheChoice() {
        write(LoadKind.TANK, TANK);
        Document page = page("/outage/hours");
        assertThat(page.select("h1").text()).isEqualTo("Tuesday, March 16 at 9:00 am looks best");
        assertThat(page.text())
                .contains("of 100")
                .contains("Latest reversal")
                .contains("Latest minute to start")
                .contains("2 needed");
        String choose = page.select("section a[href*=choose]").get(0).attr("href");
        Document form = page(choose.substring(choose.indexOf("/outage")));
        assertThat(form.select("input[name=day]").val()).isEqualTo("2027-03-16");
        assertThat(form.select("input[name=start]").val()).isEqualTo("09:00");
    }

    @Test
    void anHourTooCloseAfterMilkingIsOpenedWithItsReasonAndItsCure() {
        write(LoadKind.TANK, TANK.with("to1", "08:00"));
        Document page = page("/outage/hours?day=2027-03-16&time=09:30");
        assertThat(page.select("#opened").text()).isEqualTo("Tuesday, March 16 at 9:30 am, opened");
        assertThat(page.text())
                .contains("1 h 30 min after milking, 2 h 00 min needed.")
                .contains("The limit stays: ask the customer to milk 30 min earlier.");
    }

    @Test
    void whereNoHourIsFeasibleTheLimitThatWouldHaveToGiveIsNamed() {
        write(LoadKind.TIMES, SCHOOL);
        Document page = page("/outage/hours");
        assertThat(page.select("h1").text()).isEqualTo("No hour of the next weeks is feasible");
        assertThat(page.text()).contains("Which limit would have to give").contains("of school");
    }

    @Test
    void aVacationOpensTheHoursOfASchool() {
        write(
                LoadKind.TIMES,
                SCHOOL,
                new Cells(Map.of("mark", "recess", "what", "CLOSED", "date", "2027-01-01", "lastDate", "2028-01-01")));
        assertThat(page("/outage/hours").select("h1").text()).endsWith("looks best");
    }

    @Test
    void equipmentThatThePlanHasElsewhereRulesTheHourOut() throws Exception {
        UUID trencher = samples.machine(ground.branch(), EquipmentKind.TRENCHER, "Trencher");
        assertThat(page("/outage/hours?day=2027-03-16&time=09:30").text())
                .contains("The work needs no shared equipment.");
        assertThat(pages.post(pm, "/projects/" + project + "/outage/work", "equipment", "TRENCHER", "version", "0"))
                .hasStatus(302);
        assertThat(page("/outage/work").select("input[name=equipment][checked]").eachAttr("value"))
                .containsExactly("TRENCHER");
        assertThat(page("/outage/hours?day=2027-03-16&time=09:30").text()).contains("Free: Trencher.");
        UUID other = fixture.noticeGiven(ground, fixture.signedDairy(ground));
        booked(trencher, project, other, "2027-03-16", "AFTERNOON");
        assertThat(page("/outage/hours?day=2027-03-16&time=12:35").text()).contains("Free: Trencher.");
        booked(trencher, other, other, "2027-03-16", "MORNING");
        assertThat(page("/outage/hours?day=2027-03-16&time=09:30").text())
                .contains("Not free: Trencher is elsewhere, Sedge Hollow Dairy");
        assertThat(page("/outage/hours?day=2027-03-16&time=12:35").text()).contains("Free: Trencher.");
    }

    /** In the published plan. @param work of whose works the first is taken */
    private void booked(UUID machine, UUID at, UUID work, String day, String half) {
        BranchWall.everywhere(() -> transaction.executeWithoutResult(status -> assertThat(jdbc.sql("""
                insert into equipment_booking (id, branch_id, equipment_id, project_id, activity_id, half_days)
                select :id, :branch, :machine, :at, a.id,
                       int8range(plumbrow_half_day(cast(:day as date), :half), plumbrow_half_day(cast(:day as date), :half), '[]')
                  from activity a where a.project_id = :project order by a.position limit 1
                """)
                        .param("id", Ids.next())
                        .param("branch", ground.branch().id())
                        .param("machine", machine)
                        .param("project", work)
                        .param("at", at)
                        .param("day", day)
                        .param("half", half)
                        .update())
                .isEqualTo(1)));
    }

    @Test
    void peopleThatNobodyHasCountedLeaveTheHourOpen() throws Exception {
        world.as(
                pm,
                () -> transaction.executeWithoutResult(
                        status -> jdbc.sql("update crew set electrical_people = null where id = ?")
                                .param(ground.crewId())
                                .update()));
        assertThat(page("/outage/hours?day=2027-03-16&time=09:30").text())
                .contains("Not known yet: qualified people (Crew 4: write on its page how many it has).");
    }

    @Test
    void anHourThatIsNotLookedAtIsRefusedInWords() throws Exception {
        MvcTestResult answer = get("/outage/hours?day=2031-03-16&time=09:30");
        assertThat(answer).hasStatus(422);
        assertThat(answer.getResponse().getContentAsString()).contains("within the weeks looked at");
    }

    @Test
    void noWordSaysThatAnythingIsSafeToTouch() {
        write(LoadKind.TANK, TANK);
        assertThat(page("/outage/hours").text().toLowerCase(java.util.Locale.ROOT))
                .doesNotContain("safe to touch")
                .doesNotContain("is safe");
    }

    @Test
    void thePageTakesAFixedNumberOfQueries() {
        write(LoadKind.TANK, TANK);
        get("/outage/hours");
        assertThat(Queries.count(() -> assertThat(get("/outage/hours")).hasStatusOk()))
                .isLessThanOrEqualTo(35);
    }
}
