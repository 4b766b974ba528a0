package org.plumbrow.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.plumbrow.demo.LoadedDemo;
import org.plumbrow.evidence.MadeUpPhoto;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A crew lead on a yard without signal: the daily report and the steps of day one, with the network taken away. */
@LoadedDemo
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class DailyReportOfflineTest {

    @LocalServerPort
    int port;

    private final List<String> findings = new ArrayList<>();
    private BrowserContext phone;
    private String dayOne;
    private String report;

    /** The lead opens the own week with signal; that brings day one along, and the report is opened once. */
    @BeforeEach
    void aWeekThatIsOnThePhone() {
        phone = new Visits(port).of("jory");
        Page page = opened(phone, "/crews/week");
        while (page.locator("main li a[href$='/day-one']").count() == 0) {
            page.click("a[rel=next]");
        }
        dayOne = page.locator("main li a[href$='/day-one']").first().getAttribute("href");
        String crew = page.url().replaceAll(".*/crews/([0-9a-f-]{36}).*", "$1");
        String project = dayOne.replaceAll("/projects/([0-9a-f-]{36}).*", "$1");
        report = "/crews/%s/reports/%s/%s".formatted(crew, project, LocalDate.now(ZoneId.of("America/New_York")));
        page.navigate(report);
        says(page, "These pages are on this phone");
        left(page);
    }

    @AfterEach
    void close() {
        phone.close();
        assertThat(findings).isEmpty();
    }

    private Page opened(BrowserContext on, String address) {
        Page page = on.newPage();
        page.onPageError(error -> findings.add("script: " + error));
        page.navigate(address);
        return page;
    }

    /** As closed; a tab that is closed itself has kept the browser waiting for ever. */
    private static void left(Page page) {
        page.navigate("about:blank");
    }

    private static void says(Page page, String sentence) {
        assertThat(page.locator("#phone")).containsText(sentence);
    }

    private static void save(Page page) {
        page.click("form[data-phone] button");
    }

    private void looksGood(Page page, String name) {
        PageChecks.findings(page, name).forEach(one -> findings.add(name + ": " + one));
    }

    private int linesOfTheJournal(String words) {
        try (BrowserContext office = new Visits(port).of("maren")) {
            Page page = opened(office, dayOne.replace("/day-one", "/journal"));
            return page.locator("main").innerText().split(Pattern.quote(words), -1).length - 1;
        }
    }

    @Test
    void aReportWrittenWithoutSignalOutlivesReloadAndCountsOnce() {
        int before = linesOfTheJournal("Daily report");
        phone.setOffline(true);
        Page page = opened(phone, report);
        says(page, "Without signal: this page is as of");
        page.fill("#trouble", "The post driver stood still");
        page.fill("#people", "3");
        says(page, "not sent yet");
        page.setInputFiles("#photos", new FilePayload("driver.jpg", "image/jpeg", MadeUpPhoto.plain()));
        says(page, "Photo of the day");
        page.reload();
        assertThat(page.locator("#trouble")).hasValue("The post driver stood still");
        looksGood(page, "daily-report-kept");
        save(page);
        says(page, "No signal. Kept on this phone");
        left(page);
        AtomicInteger tries = Signal.losesTheFirstAnswer(phone);
        phone.setOffline(false);
        page = opened(phone, report);
        page.waitForCondition(() -> tries.get() >= 1);
        Signal.isBack(page);
        says(page, "Sent ");
        page.navigate(report);
        assertThat(page.locator("#trouble")).hasValue("The post driver stood still");
        assertThat(page.locator("img.thumb-pic")).hasCount(1);
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
        assertThat(linesOfTheJournal("Daily report")).isEqualTo(before + 1);
    }

    @Test
    void ofTwoWhoChangeItTheSecondSeesBothAndNothingIsOverwritten() {
        Page mine = opened(phone, report);
        says(mine, "These pages are on this phone");
        phone.setOffline(true);
        mine.fill("#trouble", "The post driver stood still until noon");
        save(mine);
        says(mine, "No signal");
        try (BrowserContext office = new Visits(port).withoutScript("maren")) {
            Page theirs = opened(office, report);
            theirs.fill("#trouble", "The driver was in the shop");
            save(theirs);
            assertThat(theirs.locator("main [role=status]").first()).containsText("kept");
        }
        phone.setOffline(false);
        says(mine, "Someone else changed this: look at both.");
        looksGood(mine, "daily-report-both");
        assertThat(mine.locator("#phone-both")).containsText("Theirs: The driver was in the shop");
        mine.locator("#phone-both label", new Page.LocatorOptions().setHasText("Yours: "))
                .click();
        mine.click("#phone-both button");
        says(mine, "Sent ");
        mine.navigate(report);
        assertThat(mine.locator("#trouble")).hasValue("The post driver stood still until noon");
    }

    private static void tick(Page page, String step) {
        page.locator("form[action$='/" + step + "/tick'] button").click();
    }

    @Test
    void stepsOfDayOneAreTickedWithoutSignalAndTheFirstOfTwoStands() {
        phone.setOffline(true);
        Page page = opened(phone, dayOne);
        tick(page, "introduced");
        says(page, "Customer introduced to the crew");
        tick(page, "string-line");
        says(page, "String line set");
        page.reload();
        assertThat(page.locator("#phone-waiting li")).hasCount(2);
        assertThat(page.locator("form[action$='/introduced/tick']")).isHidden();
        looksGood(page, "day-one-kept");
        try (BrowserContext office = new Visits(port).withoutScript("maren")) {
            Page theirs = opened(office, dayOne);
            tick(theirs, "string-line");
            assertThat(theirs.locator("main [role=status]").first()).containsText("ticked");
        }
        phone.setOffline(false);
        Signal.isBack(page);
        assertThat(page.locator("h1")).containsText("2 steps are open");
        says(page, "Maren had ticked it");
        page.click("#phone-waiting button");
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
        assertThat(linesOfTheJournal("Day one: String line set")).isEqualTo(1);
        assertThat(linesOfTheJournal("Day one: Customer introduced")).isEqualTo(1);
    }
}
