package org.plumbrow.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.plumbrow.demo.LoadedDemo;
import org.plumbrow.status.StatusFixture;
import org.springframework.beans.factory.annotation.Autowired;

/** Every page that is open while the power is off, at the crew, in the office and at the customer, by day and by night. */
@LoadedDemo
@Timeout(value = 4, unit = TimeUnit.MINUTES)
class PowerOffLooksTest extends PhoneOnTheDay {

    @Autowired
    StatusFixture status;

    /** The power has just gone off. */
    @BeforeEach
    void powerOff() {
        phone = new Visits(port).of("maren");
        Page page = phone.newPage();
        day = OutageToday.made(page, world, road);
        day.open(page);
        road.upTo(day.branch(), day.project(), "4");
        page.navigate("about:blank");
    }

    /** In the dark first: what is looked at after it is thinned out. */
    private void looks(Page page, String name) {
        page.setViewportSize(PageChecks.PHONE, 844);
        PageChecks.findingsInTheDark(page).forEach(one -> findings.add(name + ": " + one));
        PageChecks.findings(page, name).forEach(one -> findings.add(name + ": " + one));
    }

    @Test
    void theOfficeFollowsIt() {
        looks(opened("/cutovers/today?branch=" + day.branch().code()), "live-today");
        looks(opened("/projects/" + day.project() + "/outage/live"), "live-project");
    }

    @Test
    void theCustomerFollowsIt() {
        Page page = opened(status.link(day.branch(), day.project()));
        assertThat(page.locator("main")).containsText("power");
        looks(page, "live-customer");
    }

    @Test
    void theCrewWritesWhoIsThereAndWhatNearlyHappened() {
        Page page = opened(day.log() + "/people");
        page.fill("#r-name", "Perrin");
        page.fill("#r-role", "utility’s technician");
        page.click("button:has-text('Write them down')");
        assertThat(page.locator("main")).containsText("Perrin, utility’s technician since");
        looks(page, "people");
        page = opened(day.log() + "/near-miss");
        page.fill("#r-happened", "A lug fell");
        page.fill("#r-couldHave", "A short");
        page.fill("#r-done", "A tray for parts");
        page.click("button:has-text('Write the near miss down')");
        page.waitForURL("**/day-log");
        page.navigate(day.log() + "/near-miss");
        assertThat(page.locator("main")).containsText("A tray for parts");
        looks(page, "near-miss");
        looks(opened(day.log()), "log-power-off");
        page = opened(day.log() + "?night=true");
        looks(page, "log-night");
        page.navigate(day.log() + "?night=false");
    }

    private static void unfolded(Page page) {
        page.evaluate("() => document.querySelectorAll('#phone details').forEach(one => { one.open = true; })");
    }

    @Test
    void aTapThatWaitsIsSaidWithAndWithoutSignal() {
        Page page = opened(day.log());
        says(page, "The log is on this phone");
        phone.route("**/sending", route -> route.fulfill(new Route.FulfillOptions().setStatus(503)));
        page.click(".thumbs .done");
        says(page, "The server could not take it now");
        looks(page, "log-server-down");
        page.setViewportSize(PageChecks.DESK, 900);
        phone.setOffline(true);
        page.reload();
        says(page, "Without signal: this page is as of");
        page.click("#phone-list summary");
        unfolded(page);
        looks(page, "log-queued");
        phone.setOffline(false);
    }

    /** What the line side reads is asked for before any load; without it the power is not called back. */
    @Test
    void onTheWayBackTheLineSideIsAskedFor() {
        Page page = opened(day.log());
        tapped(page, page.locator("#reverse-now"));
        assertThat(page.locator("h3:visible")).containsText(new String[] {"Before any load comes back"});
        assertThat(page.locator("button:has-text('The power is back on'):visible"))
                .hasCount(0);
        looks(page, "log-way-back");
        page.fill("[name='r.A-N']:visible", "131");
        page.fill("[name='r.B-N']:visible", "122");
        page.fill("[name='r.A-B']:visible", "253");
        tapped(
                page,
                page.locator(".thumbs .done, #back-form button.done:visible").first());
        assertThat(page.locator("main")).containsText("the utility opens again");
        looks(page, "log-way-back-outside");
    }

    @Test
    void whatIsNotTakenIsSaid() {
        Page page = opened(day.log());
        page.click(".thumbs .done");
        says(page, "the log did not take this");
        looks(page, "log-refused");
    }

    @Test
    void aPhoneWhoseClockIsWrongIsSaid() {
        phone.addInitScript(DayLogOfflineTest.FOURTEEN_MINUTES_SLOW);
        Page page = opened(day.log());
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
        Page mine = opened(day.log());
        mine.click(".steps li >> nth=0 >> a:has-text('Change')");
        Page theirs = opened(mine.url());
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
