package org.plumbrow.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.FilePayload;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.plumbrow.demo.LoadedDemo;
import org.plumbrow.evidence.MadeUpPhoto;

/** The day log where there is no signal: every way in which a tap could be lost, or counted twice. */
@LoadedDemo
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class DayLogOfflineTest extends PhoneOnTheDay {

    static final String FOURTEEN_MINUTES_SLOW = """
            {
              const Right = Date, slow = 14 * 60000;
              window.Date = class extends Right {
                constructor(...said) { if (said.length) super(...said); else super(Right.now() - slow); }
                static now() { return Right.now() - slow; }
              };
            }
            """;

    /** Whether the phone's disk has what was typed and not sent. */
    private static final String IS_TYPED =
            "async () => (await plumbrowPhone.unsent(document.getElementById('phone').dataset.person)).length > 0";

    /** Path of the worker that serves this page. */
    private static final String WORKER = """
            async () => new URL((await navigator.serviceWorker.getRegistration(location.href))?.active?.scriptURL ?? 'x:').pathname""";

    /** Registers the worker as pages did when it served the survey only. */
    private static final String KNOWS_THE_OLD_ADDRESS = """
            {
              const register = ServiceWorkerContainer.prototype.register;
              ServiceWorkerContainer.prototype.register = function (address, scope) {
                return register.call(this, address.replace('phone-worker', 'survey-worker'), scope);
              };
            }
            """;

    /** The first message to a worker goes nowhere. */
    private static final String SWALLOWS_THE_FIRST_QUESTION = """
            {
              const ask = ServiceWorker.prototype.postMessage;
              let asked = 0;
              ServiceWorker.prototype.postMessage = function (...said) { if (asked++) ask.apply(this, said); };
            }
            """;

    private String log;

    /** The outage of a project is today, and its log is open and on the phone. */
    @BeforeEach
    void aLogThatIsOnThePhone() {
        phone = new Visits(port).of("maren");
        anOutageToday(phone);
        Page page = phone.newPage();
        day.open(page);
        left(page);
        keep(phone);
    }

    private void anOutageToday(BrowserContext on) {
        Page page = on.newPage();
        day = OutageToday.made(page, world, road);
        log = day.log();
        left(page);
    }

    /** The page as it is now is on the phone. */
    private void keep(BrowserContext on) {
        Page page = opened(on, "about:blank");
        day.keep(page);
        left(page);
    }

    private static void tapStepOne(Page page) {
        page.click("button[form=step-form].done");
    }

    private static void standsAt(Page page, String step) {
        assertThat(page.locator(".now:visible p.soft").first()).containsText("Step " + step + " of");
    }

    private void isStoredOnce() {
        Page page = opened(log);
        assertThat(page.locator(".steps li").first()).containsText("done");
        assertThat(page.locator(".steps li").first()).not().containsText("two entries");
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
        page.navigate(log.replace("/day-log", "/journal"));
        String journal = page.locator("main").innerText();
        assertThat(journal.split(Pattern.quote("Day log: step 1"), -1)).hasSize(2);
        left(page);
    }

    @Test
    void aTapWithoutSignalOutlivesReloadAndKilledPageAndIsStoredOnce() {
        phone.setOffline(true);
        Page page = opened(log);
        says(page, "Without signal: this page is as of");
        tapStepOne(page);
        says(page, "No signal. Kept on this phone");
        standsAt(page, "2");
        page.reload();
        says(page, "Step 1");
        standsAt(page, "2");
        PageChecks.findings(page, "day-log-kept").forEach(findings::add);
        left(page);
        page = opened(log);
        says(page, "not sent yet. It goes out by itself");
        phone.setOffline(false);
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
        isStoredOnce();
    }

    @Test
    void aPageKilledRightAfterATapWasConfirmedLosesNothing() {
        Page page = opened(log);
        phone.setOffline(true);
        tapStepOne(page);
        says(page, "Kept on this phone");
        left(page);
        phone.setOffline(false);
        page = opened(log);
        assertThat(page.locator("#step-form")).hasAttribute("action", log + "/steps/2/done");
        isStoredOnce();
    }

    @Test
    void nothingCanBeTappedOnAPageThatIsJustBeingRenewed() {
        Page page = phone.newPage();
        page.addInitScript(
                "addEventListener('pagehide', () => sessionStorage.setItem('left', document.querySelector('main')?.inert))");
        page.navigate(log);
        tapStepOne(page);
        assertThat(page.locator("#step-form")).hasAttribute("action", log + "/steps/2/done");
        assertThat(page.evaluate("sessionStorage.getItem('left')")).isEqualTo("true");
        assertThat(page.evaluate("document.querySelector('main').inert")).isEqualTo(false);
        isStoredOnce();
        left(page);
    }

    @Test
    void whatIsTypedAndNotTappedIsThereAfterTheKill() {
        phone.setOffline(true);
        Page typed = opened(log + "/wrong");
        typed.fill("#r-text", "A ladder slipped, nobody hurt");
        typed.waitForCondition(() -> Boolean.TRUE.equals(typed.evaluate(IS_TYPED)));
        left(typed);
        Page page = opened(log + "/wrong");
        assertThat(page.locator("#r-text")).hasValue("A ladder slipped, nobody hurt");
        page.click("main .acts button");
        phone.setOffline(false);
        assertThat(page.locator(".steps")).containsText("A ladder slipped, nobody hurt");
    }

    @Test
    void anAnswerThatWasLostIsAskedForAgainAndCountsOnce() {
        sentWith(Route::fetch);
    }

    @Test
    void aServerKilledBeforeItStoredTheTapGetsItAgain() {
        sentWith(route -> {});
    }

    /** The first try ends without an answer. */
    private void sentWith(java.util.function.Consumer<Route> first) {
        Page page = opened(log);
        int[] tries = {0};
        phone.route("**/sending", route -> {
            if (tries[0]++ == 0) {
                first.accept(route);
                route.abort();
            } else {
                route.resume();
            }
        });
        tapStepOne(page);
        says(page, "No signal. Kept on this phone");
        page.reload();
        page.waitForCondition(() -> tries[0] == 2);
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
        assertThat(page.locator("#step-form")).hasAttribute("action", log + "/steps/2/done");
        assertThat(tries[0]).isEqualTo(2);
        isStoredOnce();
    }

    /** Signal that comes back while the first try still waits for its answer is not missed until the next turn of the clock. */
    @Test
    void signalThatComesBackDuringATryIsNotMissed() {
        phone.setOffline(true);
        Page page = opened(log);
        tapStepOne(page);
        says(page, "No signal");
        List<Route> held = new ArrayList<>();
        boolean[] through = {false};
        phone.route("**/phone", route -> {
            if (through[0]) {
                route.resume();
            } else {
                held.add(route);
            }
        });
        phone.setOffline(false);
        // The try that the signal itself begins: held, it renews no page that is about to be opened again.
        page.waitForCondition(() -> !held.isEmpty());
        held.clear();
        page.reload();
        page.waitForCondition(() -> !held.isEmpty());
        Signal.isBack(page);
        through[0] = true;
        held.get(held.size() - 1).abort();
        assertThat(page.locator("#phone-waiting li"))
                .hasCount(0, new LocatorAssertions.HasCountOptions().setTimeout(12_000));
    }

    @Test
    void aServerThatIsDownKeepsTheTapOnThePhone() {
        Page page = opened(log);
        phone.route("**/sending", route -> route.fulfill(new Route.FulfillOptions().setStatus(503)));
        tapStepOne(page);
        says(page, "The server could not take it now. Kept on this phone");
        phone.unroute("**/sending");
        Signal.isBack(page);
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
        isStoredOnce();
    }

    @Test
    void twoPhonesThatLogTheSameStepBothStandAndAreMarked() {
        Page mine = opened(log);
        phone.setOffline(true);
        tapStepOne(mine);
        says(mine, "No signal");
        try (BrowserContext second = new Visits(port).of("maren")) {
            Page theirs = opened(second, log);
            tapStepOne(theirs);
            assertThat(theirs.locator("#step-form")).hasAttribute("action", log + "/steps/2/done");
        }
        phone.setOffline(false);
        Signal.isBack(mine);
        assertThat(mine.locator(".steps li").first()).containsText("two entries");
        assertThat(mine.locator("#phone-waiting li")).hasCount(0);
    }

    /** The power is off, and the log as it is then is on the phone. */
    private void powerOff() {
        upTo("4");
    }

    private void upTo(String step) {
        road.upTo(day.branch(), day.project(), step);
        keep(phone);
    }

    private void reconnect(Page page) {
        phone.setOffline(false);
        Signal.isBack(page);
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
    }

    private static void tap(Page page) {
        page.click(".thumbs .done");
    }

    @Test
    void aLogIsOpenedInTheMorningWithoutSignalAndGoesOn() {
        anOutageToday(phone);
        keep(phone);
        phone.setOffline(true);
        Page page = opened(log);
        page.check("input[name=service][value=SINGLE_PHASE_120_240]");
        page.fill("#r-personInCharge", "Tamsin");
        page.click("#open-form button");
        says(page, "Open the day log, ");
        standsAt(page, "1");
        day.setReversalTime(page);
        tap(page);
        standsAt(page, "2");
        left(page);
        page = opened(log);
        standsAt(page, "2");
        assertThat(page.locator("#left")).not().hasText("–");
        page.fill("[name='r.A-N']:visible", "121");
        page.fill("[name='r.B-N']:visible", "122");
        page.fill("[name='r.A-B']:visible", "243");
        PageChecks.findings(page, "day-log-opened-offline").forEach(findings::add);
        tap(page);
        standsAt(page, "3");
        reconnect(page);
        assertThat(page.locator(".steps li").first()).containsText("latest reversal set");
        assertThat(page.locator(".steps")).containsText("121 V, 122 V, 243 V");
        assertThat(page.locator("#step-form")).hasAttribute("action", log + "/steps/3/done");
    }

    @Test
    void aLogIsClosedWithoutSignal() {
        upTo("13");
        phone.setOffline(true);
        Page page = opened(log);
        assertThat(page.locator(".thumbs .done")).hasText("Step 14 is done");
        tap(page);
        assertThat(page.locator(".thumbs .done")).hasText("Close the log");
        tap(page);
        says(page, "Close the log, ");
        assertThat(page.locator(".thumbs .done")).isHidden();
        phone.setOffline(false);
        Signal.isBack(page);
        assertThat(page.locator("main .lead")).containsText("Closed,");
    }

    @Test
    void aWrongEntryIsCorrectedWithoutSignalAndWhatIsNotSentIsTakenOff() {
        upTo("1");
        phone.setOffline(true);
        Page page = opened(log);
        page.click(".steps li >> nth=0 >> a:has-text('Change')");
        page.fill("#r-value", "Jory, electrician");
        page.fill("#r-reason", "Jory did it");
        page.click("button:has-text('Correct it')");
        assertThat(page).hasURL(Pattern.compile(".*/day-log$"));
        says(page, "Step 1: change an entry, ");
        page.fill("[name='r.A-N']:visible", "12");
        page.click("button:has-text('Save what is read so far')");
        assertThat(page.locator("#phone-waiting li")).hasCount(2);
        page.click("#phone-list summary");
        page.click("#phone-waiting li >> nth=1 >> button:has-text('Not so')");
        assertThat(page.locator("#phone-waiting li")).hasCount(1);
        reconnect(page);
        assertThat(page.locator(".steps li").first()).containsText("Jory, electrician");
        assertThat(page.locator(".steps li").first()).containsText("Jory did it");
        assertThat(page.locator(".steps")).not().containsText("12 V");
    }

    @Test
    void whoComesAndWhatNearlyHappenedIsWrittenDownWithoutSignal() {
        phone.setOffline(true);
        Page page = opened(log + "/people");
        page.fill("#r-name", "Perrin");
        page.fill("#r-role", "owner");
        page.click("button:has-text('Write them down')");
        says(page, "Somebody came, ");
        page.fill("#r-name", "Sil");
        page.fill("#r-role", "electrician");
        page.click("button:has-text('Write them down')");
        assertThat(page.locator("#phone-waiting li")).hasCount(2);
        page.navigate(log + "/near-miss");
        page.fill("#r-happened", "A lug fell");
        page.fill("#r-couldHave", "A short");
        page.fill("#r-done", "A tray for parts");
        page.click("button:has-text('Write the near miss down')");
        page.waitForURL("**" + log);
        assertThat(page.locator("#phone-waiting li")).hasCount(3);
        reconnect(page);
        page = opened(log + "/people");
        assertThat(page.locator("main")).containsText("Perrin, owner since");
        assertThat(page.locator("main")).containsText("Sil, electrician since");
        page.navigate(log + "/near-miss");
        assertThat(page.locator("main")).containsText("A tray for parts");
    }

    @Test
    void aPhotoWaitsThroughAKilledPageAndIsStoredOnce() {
        phone.setOffline(true);
        Page page = opened(log);
        page.click("summary:has-text('Add a photo')");
        page.setInputFiles("#r-photo", new FilePayload("panel.jpg", "image/jpeg", MadeUpPhoto.plain()));
        page.click("button:has-text('Keep the photo')");
        says(page, "Photo at step 1, ");
        left(page);
        page = opened(log);
        says(page, "Photo at step 1, ");
        reconnect(page);
        assertThat(page.locator(".steps a[href^='/evidence/']")).hasCount(1);
    }

    /** A phone that knows the worker by its old address opens the log by it, and goes over to the new one with signal. */
    @Test
    void aPhoneWithTheWorkersOldAddressOpensTheLogAndGoesOver() {
        anOutageToday(phone);
        Page old = phone.newPage();
        old.addInitScript(KNOWS_THE_OLD_ADDRESS);
        day.keep(old);
        old.waitForFunction(WORKER + " === '/survey-worker.js'");
        phone.setOffline(true);
        old.reload();
        says(old, "Without signal: this page is as of");
        phone.setOffline(false);
        left(old);
        keep(phone);
        Page page = opened(log);
        page.waitForFunction(WORKER + " === '/phone-worker.js'");
        phone.setOffline(true);
        page.reload();
        says(page, "Without signal: this page is as of");
    }

    /** A worker that another takes the place of just then never answers. */
    @Test
    void copiesThatNeverCameAreAskedForAgain() {
        Page first = opened(log);
        first.evaluate("async () => { for (const name of await caches.keys()) await caches.delete(name); }");
        left(first);
        Page page = phone.newPage();
        page.addInitScript(SWALLOWS_THE_FIRST_QUESTION);
        page.navigate(log);
        assertThat(page.locator("#phone-pages"))
                .containsText(
                        "The log is on this phone", new LocatorAssertions.ContainsTextOptions().setTimeout(45_000));
    }

    /** As the browser itself judges it. */
    @Test
    void theBrowserWouldPutTheLogOnTheHomeScreen() {
        Page page = opened(log);
        assertThat(page.locator("#phone-home")).containsText("Add to Home Screen");
        CDPSession browser = phone.newCDPSession(page);
        JsonObject manifest = browser.send("Page.getAppManifest");
        assertThat(manifest.getAsJsonArray("errors")).isEmpty();
        assertThat(manifest.get("data").getAsString()).contains("\"start_url\":\"" + log + "\"");
        JsonObject judged = browser.send("Page.getInstallabilityErrors");
        assertThat(judged.getAsJsonArray("installabilityErrors"))
                .allSatisfy(
                        one -> assertThat(one.getAsJsonObject().get("errorId").getAsString())
                                .isEqualTo("in-incognito"));
    }

    @Test
    void theClockRunsAndWarnsWithoutSignal() {
        powerOff();
        phone.setOffline(true);
        Page page = phone.newPage();
        page.clock().install();
        page.navigate(log);
        assertThat(page.locator("#off")).hasText(Pattern.compile("0:0\\d"));
        long left = ((Number)
                        page.evaluate("() => Date.parse(document.getElementById('clock').dataset.decide) - Date.now()"))
                .longValue();
        page.clock().fastForward(left - 14 * 60_000L);
        assertThat(page.locator("#early")).hasText("Less than 15 minutes to decide whether to reverse.");
        page.clock().fastForward(10 * 60_000L);
        assertThat(page.locator("#early")).hasText("Less than 5 minutes to decide whether to reverse.");
        page.clock().fastForward(5 * 60_000L);
        assertThat(page.locator("#early")).hasText("The latest time to reverse has passed.");
        assertThat(page.locator("#left")).hasText("over");
    }

    private static void reversing(Page page) {
        assertThat(page.locator(".way")).isVisible();
        assertThat(page.locator(".thumbs .done")).hasText("The line side is read");
        assertThat(page.locator("#on-form")).isHidden();
        assertThat(page.locator("#reverse-now")).isHidden();
    }

    private static void lineSide(Page page, String legA) {
        page.fill("#back-A-N", legA);
        page.fill("#back-B-N", "120");
        page.fill("#back-A-B", "240");
        tap(page);
    }

    @Test
    void aReversalTakesOneTapWithoutSignalAndCanBeTakenBackThere() {
        powerOff();
        phone.setOffline(true);
        Page page = opened(log);
        page.click("#reverse-now");
        says(page, "No signal. Kept on this phone");
        reversing(page);
        PageChecks.findings(page, "day-log-reversing").forEach(findings::add);
        page.click("summary:has-text('Begun by mistake')");
        page.fill("#r-mistake", "Hit by the glove");
        page.click("button:has-text('Take the reversal back')");
        assertThat(page.locator(".way")).isHidden();
        standsAt(page, "5");
        page.click("#reverse-now");
        reversing(page);
        left(page);
        page = opened(log);
        reversing(page);
        lineSide(page, "131");
        assertThat(page.locator("[data-limits]")).isVisible();
        assertThat(page.locator("#on-form")).isHidden();
        lineSide(page, "120");
        assertThat(page.locator(".thumbs .done")).hasText("The power is back on");
        tap(page);
        assertThat(page.locator(".way")).isHidden();
        phone.setOffline(false);
        Signal.isBack(page);
        assertThat(page.locator("#why-reversed")).isVisible();
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
        assertThat(page.locator(".steps")).containsText("reversed. Hit by the glove taken back");
        assertThat(page.locator(".steps")).containsText("power back on");
        page.navigate(log.replace("/day-log", "/journal"));
        assertThat(page.locator("main").innerText().split("Day log: reversed", -1))
                .hasSize(3);
    }

    @Test
    void aPhoneWhoseClockIsWrongSaysSoAndBothTimesStand() {
        phone.addInitScript(FOURTEEN_MINUTES_SLOW);
        Page page = opened(log);
        assertThat(page.locator("#phone-clock")).containsText("14 min slow");
        tapStepOne(page);
        assertThat(page.locator(".steps li").first()).containsText("the phone’s clock said");
        assertThat(page.locator(".steps li").first()).containsText("14 min off");
    }

    @Test
    void whatTheLogDoesNotTakeStaysOnThePhoneWithItsReason() {
        Page page = opened(log);
        tapStepOne(page);
        assertThat(page.locator("#step-form")).hasAttribute("action", log + "/steps/2/done");
        phone.setOffline(true);
        page.fill("#step-form input[inputmode=decimal] >> nth=0", "121");
        page.click("button[form=step-form].done");
        says(page, "No signal");
        phone.setOffline(false);
        Signal.isBack(page);
        says(page, "the log did not take this");
        page.reload();
        says(page, "the log did not take this");
        assertThat(page.locator("#phone-waiting li"))
                .containsText(Pattern.compile(
                        momentsAgo(ZoneId.of(page.locator("#phone").getAttribute("data-zone")))));
    }

    /** As the phone writes the time of a tap: now, or one of the last minutes. */
    private static String momentsAgo(ZoneId zone) {
        DateTimeFormatter time = DateTimeFormatter.ofPattern("h:mm a", Locale.US);
        ZonedDateTime now = ZonedDateTime.now(zone);
        return IntStream.range(0, 4)
                .mapToObj(minutes -> time.format(now.minusMinutes(minutes)).toLowerCase(Locale.ROOT))
                .collect(Collectors.joining("|", "(", ")"))
                .replace(" ", "\\s");
    }
}
