package org.plumbrow.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.daylog.CutoverRoad;
import org.plumbrow.demo.LoadedDemo;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * A phone that dies in the middle of the day log: every process of the browser is killed at once, without a word of
 * warning, and it is started again on what is on its disk.
 */
@LoadedDemo
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class DayLogKilledTest {

    @LocalServerPort
    int port;

    @Autowired
    TestWorld world;

    @Autowired
    CutoverRoad road;

    @TempDir(cleanup = CleanupMode.NEVER)
    Path disk;

    private OutageToday day;

    private Page started(boolean signal) {
        BrowserContext phone = Chromium.startedOn(disk, new Visits(port).base());
        phone.setOffline(!signal);
        return phone.pages().get(0);
    }

    /** SIGKILL to the browser that keeps its things in this folder, and to all that it has started. */
    private void kill() {
        List<ProcessHandle> browsers = ProcessHandle.current()
                .descendants()
                .filter(one -> one.info().commandLine().orElse("").contains("--user-data-dir=" + disk))
                .flatMap(one -> Stream.concat(Stream.of(one), one.descendants()))
                .distinct()
                .toList();
        assertThat(browsers).as("processes of the browser").hasSizeGreaterThan(2);
        browsers.forEach(ProcessHandle::destroyForcibly);
        browsers.forEach(one -> one.onExit().join());
    }

    private Page aLogThatIsOnThePhone() {
        Page page = started(true);
        page.setDefaultNavigationTimeout(60_000);
        page.navigate(new Visits(port).base() + "/sign-in");
        Visits.signIn(page, "maren");
        day = OutageToday.made(page, world, road);
        day.open(page);
        day.keep(page);
        return page;
    }

    private static void kept(Page page) {
        assertThat(page.locator("#phone")).containsText("No signal. Kept on this phone");
    }

    private static void standsAt(Page page, String step) {
        assertThat(page.locator(".now:visible p.soft").first()).containsText("Step " + step + " of");
    }

    @Test
    void aPhoneKilledRightAfterATapWasConfirmedHasItAndSendsItOnce() {
        Page page = aLogThatIsOnThePhone();
        page.context().setOffline(true);
        page.click("button[form=step-form].done");
        kept(page);
        kill();

        page = started(false);
        page.navigate(day.log());
        standsAt(page, "2");
        assertThat(page.locator("#phone-waiting li")).hasCount(1);
        assertThat(page.locator("#phone-waiting")).containsText("Step 1");

        // Who it was signed in as ends with the browser; what was tapped does not.
        page.context().setOffline(false);
        assertThat(page.locator("#phone")).containsText("It is sent once you have signed in");
        page.click("#phone-in a");
        Visits.signIn(page, "maren");
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
        isStoredOnce(page);
        kill();
    }

    @Test
    void twoTapsAndTheReadingsBetweenThemOutliveTwoKills() {
        Page page = aLogThatIsOnThePhone();
        page.context().setOffline(true);
        page.click("button[form=step-form].done");
        kept(page);
        kill();

        page = started(false);
        page.navigate(day.log());
        standsAt(page, "2");
        page.fill("[name='r.A-N']:visible", "121");
        page.fill("[name='r.B-N']:visible", "122");
        page.fill("[name='r.A-B']:visible", "243");
        page.click(".thumbs .done");
        standsAt(page, "3");
        kill();

        page = started(true);
        page.navigate(day.log());
        Visits.signIn(page, "maren");
        assertThat(page.locator("#step-form")).hasAttribute("action", day.log() + "/steps/3/done");
        assertThat(page.locator(".steps")).containsText("121 V, 122 V, 243 V");
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
        isStoredOnce(page);
        kill();
    }

    private void isStoredOnce(Page page) {
        assertThat(page.locator(".steps li").first()).containsText("done");
        assertThat(page.locator(".steps li").first()).not().containsText("two entries");
        page.navigate(day.log().replace("/day-log", "/journal"));
        String journal = page.locator("main").innerText();
        assertThat(journal.split(Pattern.quote("Day log: step 1"), -1)).hasSize(2);
    }
}
