package org.plumbrow.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.plumbrow.database.BranchWall;
import org.plumbrow.demo.LoadedDemo;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * A branch manager loses a crew: sees what breaks, lays three remedies beside it, accepts one, publishes, sees who must be
 * told, and opens every date of all jobs that moved. Numbers on the pages are held against the rows.
 * {@code -Dplumbrow.walk.projects=150} walks a generated branch of so many; seconds a page stand in
 * {@code target/lost-crew-walk.txt} then.
 */
@LoadedDemo
@DirtiesContext
class LostCrewWalkTest {

    /** The plan that is published here stays, and others look at the shared one. */
    @DynamicPropertySource
    static void aDemoOfItsOwn(DynamicPropertyRegistry properties) {
        OwnDemo.in("demo-lost-crew", properties);
        properties.add("plumbrow.demo.projects", () -> Integer.getInteger("plumbrow.walk.projects", 0));
    }

    private static final Duration A_BUSY_MACHINE = Duration.ofMinutes(3);
    private static final String LOST = "Walk: Crew 1 lost";
    private static final String SATURDAYS = "Walk: lost, and Saturdays";
    private static final String DEMO = " branch_id in (select id from branch where name = 'Quillback Valley')";
    private static final String LATE = """
            select count(*) from planned_promise p join plan on plan.id = p.plan_id
             where plan.state = 'PUBLISHED' and (p.half_days_late > 0 or p.finish_half_day is null) and plan.""" + DEMO;

    @LocalServerPort
    int port;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private BrowserContext browser;
    private PageSeconds seconds;

    @Test
    void aLostCrewIsMendedAndEverybodyItConcernsIsTold() {
        browser = new Visits(port).of("ines");
        seconds = PageSeconds.in(browser);
        Page page = browser.newPage();
        planned(page);
        threeRemedies(page);
        compared(page);
        accepted(page);
        published(page);
        List<String> moved = told(page);
        everyDateExplainsItself(page, moved);
        onAPhone(page);
        left(page);
        seconds.write(Path.of("target", "lost-crew-walk.txt"));
    }

    /** The first plan of a large branch is made while people may look already. */
    private static void planned(Page page) {
        page.navigate("/look-ahead");
        Instant until = Instant.now().plus(A_BUSY_MACHINE);
        while (page.locator("h1").innerText().contains("no plan yet")
                && Instant.now().isBefore(until)) {
            page.waitForTimeout(1_000);
            page.navigate("/look-ahead");
        }
    }

    private void threeRemedies(Page page) {
        String first = begun(page, LOST);
        away(page, first);
        assertThat(page.locator("h1")).containsText(LOST + ": ");
        String saturdays = begun(page, SATURDAYS);
        away(page, saturdays);
        change(page, saturdays, "SATURDAYS", () -> page.fill("input[name=days]", "6"));
        String hired = begun(page, "Walk: lost, one hired");
        away(page, hired);
        change(page, hired, "CREW_MORE", () -> {
            page.fill("input[name=name]", "Walk crew");
            page.selectOption("select[name=crew]", new SelectOption().setLabel("Crew 1"));
        });
        String driver = begun(page, "Walk: lost, a driver more");
        away(page, driver);
        change(page, driver, "MACHINE_MORE", () -> {
            page.fill("input[name=name]", "Walk driver");
            page.selectOption("select[name=machine]", new SelectOption().setLabel("Post driver"));
        });
    }

    private static String begun(Page page, String name) {
        page.navigate("/look-ahead/scenarios/new");
        page.fill("input[name=name]", name);
        page.click("main form button");
        return page.url();
    }

    private static void away(Page page, String scenario) {
        change(page, scenario, "CREW_AWAY", () -> {
            page.selectOption("select[name=crew]", new SelectOption().setLabel("Crew 1"));
            page.fill("input[name=days]", "15");
        });
    }

    private static void change(Page page, String scenario, String kind, Runnable filledIn) {
        page.navigate(scenario + "/changes/new?kind=" + kind);
        filledIn.run();
        page.click("main form button");
        assertThat(page.url()).as(kind + " is in the scenario").isEqualTo(scenario);
    }

    /** Each line counts every promise; the plan as it stands breaks what its rows break. */
    private void compared(Page page) {
        page.navigate("/look-ahead/scenarios");
        long late = count(LATE);
        long promises = count("select count(*) from planned_promise p join plan on plan.id = p.plan_id"
                + " where plan.state = 'PUBLISHED' and plan." + DEMO);
        Locator lines = page.locator("table.fold tbody tr");
        assertThat(lines.count()).isGreaterThanOrEqualTo(5);
        for (Locator line : lines.all()) {
            assertThat(number(line, 0) + number(line, 1)).as(line.innerText()).isEqualTo(promises);
        }
        assertThat(number(lines.first(), 1)).isEqualTo(late);
        assertThat(number(line(page, LOST), 2)).isGreaterThanOrEqualTo(number(lines.first(), 2));
        assertThat(number(line(page, LOST), 3)).isPositive();
        assertThat(line(page, LOST)).containsText("Crew 1");
    }

    private static Locator line(Page page, String name) {
        return page.locator(
                "table.fold tbody tr",
                new Page.LocatorOptions().setHas(page.locator("th a", new Page.LocatorOptions().setHasText(name))));
    }

    private static long number(Locator line, int column) {
        return Long.parseLong(line.locator("td").nth(column).innerText().replaceAll("\\D", ""));
    }

    private void accepted(Page page) {
        page.click("th a:text-is('" + SATURDAYS + "')");
        page.click("form[action$='/accept'] button");
        assertThat(page.url()).endsWith("/look-ahead");
        assertThat(page.locator("main")).containsText("Recorded.");
        assertThat(count("select count(*) from crew_absence where note = '" + SATURDAYS + "'"))
                .isEqualTo(1);
        assertThat(count("select count(*) from worked_day where reason = '" + SATURDAYS + "'"))
                .isEqualTo(6);
        page.navigate("/settings/days/worked");
        assertThat(page.locator("tbody tr").count()).isEqualTo(6);
    }

    /** As soon as the search has a plan that is good enough for a walk. */
    private void published(Page page) {
        Locator draft = page.locator("a[href='/look-ahead/publish']");
        Locator enough = page.locator("form[action$='/stop'] button");
        Instant until = Instant.now().plus(A_BUSY_MACHINE);
        page.navigate("/look-ahead");
        while (draft.count() == 0 && Instant.now().isBefore(until)) {
            if (enough.count() > 0) {
                enough.first().click();
            }
            page.waitForTimeout(1_000);
            page.navigate("/look-ahead");
        }
        draft.click();
        page.click("form[action$='/publish'] button");
        assertThat(page.url()).endsWith("/look-ahead/tell");
        page.navigate("/look-ahead");
        long late = count(LATE);
        assertThat(page.locator("h1"))
                .hasText(Pattern.compile(
                        late == 0
                                ? "Look-ahead: (?!.*break).*"
                                : late == 1 ? ".*one promise breaks.*" : ".*: (" + late + "|[a-z]+) promises break.*"));
    }

    /** Whoever is told leaves the list of those who have to be. @return the pages of jobs whose customers are told */
    private List<String> told(Page page) {
        page.navigate("/look-ahead/tell");
        int left = page.locator("main ul.tells > li").count();
        assertThat(left).isPositive();
        assertThat(page.locator("h1")).containsText(left == 1 ? "1 has" : left + " have");
        List<String> jobs = new ArrayList<>();
        page.locator("main ul.tells a[href^='/projects/']").all().forEach(job -> jobs.add(job.getAttribute("href")));
        page.locator("button[value=spoken]").first().click();
        assertThat(page.locator("h1")).containsText(left == 2 ? "1 has" : left - 1 + " have");
        assertThat(count("select count(*) from plan_told join plan on plan.id = plan_id"
                        + " where plan.state = 'PUBLISHED' and plan." + DEMO))
                .isEqualTo(1);
        return jobs;
    }

    /** The dates of one job are looked at in the browser, those of the others are asked for. */
    private void everyDateExplainsItself(Page page, List<String> moved) {
        List<String> jobs = moved.isEmpty() ? List.of(aPlannedJob()) : moved;
        jobs.stream().skip(1).forEach(job -> datesOf(page, job).forEach(date -> asked(page, date + "/why")));
        for (String date : datesOf(page, jobs.get(0))) {
            page.navigate(date + "/why");
            assertThat(page.locator("h1").innerText()).as(date).contains(" ");
            assertThat(page.locator("ol.chain > li, main > p").count()).as(date).isPositive();
            assertThat(page.locator("main").innerText()).as(date).doesNotContain("null", "??");
        }
    }

    private static Set<String> datesOf(Page page, String job) {
        page.navigate(job + "/schedule");
        Set<String> dates = new LinkedHashSet<>();
        page.locator("main a[href^='" + job + "/schedule/']")
                .all()
                .forEach(link -> dates.add(link.getAttribute("href").replaceAll("/(why|move|effect)?(\\?.*)?$", "")));
        dates.remove(job + "/schedule");
        assertThat(dates).as(job).hasSizeGreaterThan(5);
        return dates;
    }

    private void asked(Page page, String address) {
        long begun = System.nanoTime();
        APIResponse answer = page.request().get("http://localhost:" + port + address);
        assertThat(answer.status()).as(address).isEqualTo(200);
        assertThat(answer.text())
                .as(address)
                .containsPattern("class=\"chain\"|It was finished|What binds a date")
                .doesNotContain(">null<", "??");
        answer.dispose();
        seconds.took("GET " + address, (System.nanoTime() - begun) / 1e9);
    }

    private String aPlannedJob() {
        return "/projects/"
                + seen(() -> jdbc.sql(
                                "select p.project_id::text from planned_promise p join plan on plan.id = p.plan_id"
                                        + " where plan.state = 'PUBLISHED' and plan." + DEMO + " limit 1")
                        .query(String.class)
                        .single());
    }

    private static void onAPhone(Page page) {
        String date = page.url();
        page.setViewportSize(PageChecks.PHONE, 844);
        for (String address : List.of("/look-ahead/scenarios", "/look-ahead/tell", "/look-ahead", date)) {
            page.navigate(address);
            assertThat(PageChecks.findings(page, "lost-crew-walk")).as(address).isEmpty();
        }
    }

    /** The rows as the other tests on the demo know them; the plan is made anew and published when they ask for it. */
    @AfterEach
    void asItWas() {
        seen(() -> jdbc.sql("delete from worked_day where reason like 'Walk: %'")
                        .update()
                + jdbc.sql("delete from crew_absence where note like 'Walk: %'").update()
                + jdbc.sql(
                                "delete from scenario_change where scenario_id in (select id from scenario where name like 'Walk: %')")
                        .update()
                + jdbc.sql("delete from scenario where name like 'Walk: %'").update());
        Page page = browser.newPage();
        page.navigate("/look-ahead");
        page.locator("form[action$='/recompute'] button").first().click();
        left(page);
        browser.close();
    }

    private static void left(Page page) {
        page.navigate("about:blank");
    }

    private long count(String sql) {
        return seen(() -> jdbc.sql(sql).query(Long.class).single());
    }

    private <T> T seen(Supplier<T> work) {
        return BranchWall.everywhere(() -> transaction.execute(status -> work.get()));
    }
}
