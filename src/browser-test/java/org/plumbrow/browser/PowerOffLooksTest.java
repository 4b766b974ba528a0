package org.plumbrow.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.daylog.CutoverRoad;
import org.plumbrow.demo.LoadedDemo;
import org.plumbrow.status.StatusFixture;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Every page that is open while the power is off, at the crew, in the office and at the customer, by day and by night. */
@LoadedDemo
@Timeout(value = 4, unit = TimeUnit.MINUTES)
class PowerOffLooksTest {

    @LocalServerPort
    int port;

    @Autowired
    TestWorld world;

    @Autowired
    CutoverRoad road;

    @Autowired
    StatusFixture status;

    private final List<String> findings = new ArrayList<>();
    private BrowserContext browser;
    private OutageToday day;

    /** The power has just gone off. */
    @BeforeEach
    void powerOff() {
        browser = new Visits(port).of("maren");
        Page page = browser.newPage();
        day = OutageToday.made(page, world, road);
        day.open(page);
        road.upTo(day.branch(), day.project(), "4");
        page.navigate("about:blank");
    }

    @AfterEach
    void close() {
        browser.close();
        assertThat(findings).isEmpty();
    }

    private Page at(String address) {
        Page page = browser.newPage();
        page.onPageError(error -> findings.add("script: " + error));
        page.navigate(address);
        return page;
    }

    /** In the dark first: what is looked at after it is thinned out. */
    private void looks(Page page, String name) {
        page.setViewportSize(PageChecks.PHONE, 844);
        PageChecks.findingsInTheDark(page).forEach(one -> findings.add(name + ": " + one));
        PageChecks.findings(page, name).forEach(one -> findings.add(name + ": " + one));
    }

    @Test
    void theOfficeFollowsIt() {
        looks(at("/cutovers/today?branch=" + day.branch().code()), "live-today");
        looks(at("/projects/" + day.project() + "/outage/live"), "live-project");
    }

    @Test
    void theCustomerFollowsIt() {
        Page page = at(status.link(day.branch(), day.project()));
        assertThat(page.locator("main")).containsText("power");
        looks(page, "live-customer");
    }

    @Test
    void theCrewWritesWhoIsThereAndWhatNearlyHappened() {
        Page page = at(day.log() + "/people");
        page.fill("#r-name", "Perrin");
        page.fill("#r-role", "utility’s technician");
        page.click("button:has-text('Write them down')");
        assertThat(page.locator("main")).containsText("Perrin, utility’s technician since");
        looks(page, "people");
        page = at(day.log() + "/near-miss");
        page.fill("#r-happened", "A lug fell");
        page.fill("#r-couldHave", "A short");
        page.fill("#r-done", "A tray for parts");
        page.click("button:has-text('Write the near miss down')");
        page.waitForURL("**/day-log");
        page.navigate(day.log() + "/near-miss");
        assertThat(page.locator("main")).containsText("A tray for parts");
        looks(page, "near-miss");
        looks(at(day.log()), "log-power-off");
        page = at(day.log() + "?night=true");
        looks(page, "log-night");
        page.navigate(day.log() + "?night=false");
    }

    private static void says(Page page, String sentence) {
        assertThat(page.locator("#phone")).containsText(sentence);
    }

    private static void opened(Page page) {
        page.evaluate("() => document.querySelectorAll('#phone details').forEach(one => { one.open = true; })");
    }

    @Test
    void aTapThatWaitsIsSaidWithAndWithoutSignal() {
        Page page = at(day.log());
        says(page, "The log is on this phone");
        browser.route("**/sending", route -> route.fulfill(new Route.FulfillOptions().setStatus(503)));
        page.click(".thumbs .done");
        says(page, "The server could not take it now");
        looks(page, "log-server-down");
        page.setViewportSize(PageChecks.DESK, 900);
        browser.setOffline(true);
        page.reload();
        says(page, "Without signal: this page is as of");
        page.click("#phone-list summary");
        opened(page);
        looks(page, "log-queued");
        browser.setOffline(false);
    }

    @Test
    void whatIsNotTakenIsSaid() {
        Page page = at(day.log());
        page.click(".thumbs .done");
        says(page, "the log did not take this");
        looks(page, "log-refused");
    }

    @Test
    void aPhoneWhoseClockIsWrongIsSaid() {
        browser.addInitScript(DayLogOfflineTest.FOURTEEN_MINUTES_SLOW);
        Page page = at(day.log());
        assertThat(page.locator("#phone-clock")).containsText("14 min slow");
        looks(page, "log-wrong-clock");
    }

    private static void corrects(Page page, String who) {
        page.fill("#r-value", who);
        page.fill("#r-reason", who + " did it");
        page.click("button:has-text('Correct it')");
    }

    @Test
    void twoWhoChangeTheSameEntryAreSetBesideEachOther() {
        Page mine = at(day.log());
        mine.click(".steps li >> nth=0 >> a:has-text('Change')");
        Page theirs = at(mine.url());
        corrects(theirs, "Sil, electrician");
        theirs.waitForURL("**/day-log");
        corrects(mine, "Jory, electrician");
        says(mine, "Somebody else changed this entry meanwhile");
        // When it was tapped stands there, as on the log itself.
        String tapped = mine.locator("main > p > b").first().innerText().replaceAll(":.*", ":");
        assertThat(mine.locator("#phone-waiting li")).containsText(", " + tapped);
        looks(mine, "log-conflict");
    }
}
