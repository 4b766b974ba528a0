package org.plumbrow.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.plumbrow.demo.LoadedDemo;

/** What waits on a phone and is wrong: readings put right in place, and names that do not sign. By keyboard and by touch. */
@LoadedDemo
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class DayLogWaitingTest extends PhoneOnTheDay {

    /** A phone with a screen that is touched, and a keyboard for who has one. */
    @BeforeEach
    void aLogThatIsOnThePhone() {
        phone = Chromium.browser()
                .newContext(new Browser.NewContextOptions()
                        .setBaseURL(new Visits(port).base())
                        .setViewportSize(PageChecks.PHONE, 844)
                        .setHasTouch(true));
        phone.addInitScript(PageChecks.AXE);
        Page page = phone.newPage();
        Visits.signIn(page, "maren");
        day = OutageToday.made(page, world, road);
        day.open(page);
        page.navigate("about:blank");
    }

    /** The log at this step, on the phone, without signal. */
    private Page withoutSignalAfter(String step) {
        road.upTo(day.branch(), day.project(), step);
        Page page = phone.newPage();
        page.onPageError(error -> findings.add("script: " + error));
        day.keep(page);
        phone.setOffline(true);
        return page;
    }

    private static void read(Page page, String first) {
        page.fill("[name='r.A-N']:visible", first);
        page.fill("[name='r.B-N']:visible", "122");
        page.fill("[name='r.A-B']:visible", "243");
    }

    private static void standsAt(Page page, String step) {
        assertThat(page.locator(".now:visible p.soft").first()).containsText(step + " of");
    }

    private void sent(Page page) {
        phone.setOffline(false);
        Signal.isBack(page);
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
    }

    private void bothStand(Page page) {
        assertThat(page.locator("#step-form")).hasAttribute("action", day.log() + "/steps/3/done");
        assertThat(page.locator(".steps")).containsText("121 V (corrected), 122 V, 243 V");
        page.click(".steps summary:has-text('121 V')");
        assertThat(page.locator(".steps")).containsText("(was Leg A to neutral: 12 V). Typed wrong");
    }

    @Test
    void aReadingThatWaitsIsPutRightByTouchAndBothStand() {
        Page page = withoutSignalAfter("1");
        read(page, "12");
        page.tap(".thumbs .done");
        standsAt(page, "Step 3");
        page.tap("#phone-list summary");
        assertThat(page.locator("#phone-waiting")).containsText("Leg A to neutral 12 V");
        page.tap("#phone-waiting button:has-text('Correct a reading')");
        page.fill("#phone-waiting form input >> nth=0", "lots");
        page.tap("button:has-text('Keep the correction')");
        assertThat(page.locator("#phone-waiting form .wrong")).containsText("“lots” is no number");
        PageChecks.findings(page, "day-log-correcting").forEach(findings::add);
        page.setViewportSize(PageChecks.PHONE, 844);
        page.fill("#phone-waiting form input >> nth=0", "121");
        page.tap("button:has-text('Keep the correction')");
        says(page, "Corrected on this phone");
        assertThat(page.locator("#phone-waiting")).containsText("Leg A to neutral 121 V (12 V until ");
        page.reload();
        assertThat(page.locator("#phone-waiting")).containsText("Leg A to neutral 121 V (12 V until ");
        sent(page);
        bothStand(page);
    }

    @Test
    void aReadingThatWaitsIsPutRightByKeyboardAlone() {
        Page page = withoutSignalAfter("1");
        read(page, "12");
        page.focus(".thumbs .done");
        page.keyboard().press("Enter");
        standsAt(page, "Step 3");
        page.focus("#phone-list summary");
        page.keyboard().press("Enter");
        page.keyboard().press("Tab");
        page.keyboard().press("Enter");
        // The first reading is in focus, and all of it is chosen.
        page.keyboard().type("121");
        page.keyboard().press("Enter");
        says(page, "Corrected on this phone");
        assertThat(page.locator("#phone-waiting li button").first()).isFocused();
        sent(page);
        bothStand(page);
    }

    /** The first had come, and only its answer had not: the correction follows. */
    @Test
    void aReadingWhoseAnswerWasLostIsPutRightInTheLog() {
        Page page = withoutSignalAfter("1");
        phone.setOffline(false);
        phone.route("**/sending", route -> {
            route.fetch();
            route.abort();
        });
        read(page, "119");
        page.tap(".thumbs .done");
        says(page, "No signal. Kept on this phone");
        page.tap("#phone-list summary");
        page.tap("#phone-waiting button:has-text('Correct a reading')");
        page.fill("#phone-waiting form input >> nth=0", "121");
        phone.unroute("**/sending");
        page.tap("button:has-text('Keep the correction')");
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
        page.navigate(day.log());
        assertThat(page.locator(".steps")).containsText("121 V (corrected), 122 V, 243 V");
        page.click(".steps summary:has-text('121 V')");
        assertThat(page.locator(".steps")).containsText("(was Leg A to neutral: 119 V). Typed wrong");
    }

    /** What is tapped while the first is on its way and only then put right is not lost with the first's answer. */
    @Test
    void aCorrectionMadeWhileTheFirstIsOnItsWayIsSentToo() {
        Page page = withoutSignalAfter("1");
        List<Route> held = new ArrayList<>();
        phone.route("**/sending", held::add);
        phone.setOffline(false);
        read(page, "119");
        page.tap(".thumbs .done");
        page.waitForCondition(() -> !held.isEmpty());
        page.tap("#phone-list summary");
        page.tap("#phone-waiting button:has-text('Correct a reading')");
        page.fill("#phone-waiting form input >> nth=0", "121");
        page.tap("button:has-text('Keep the correction')");
        says(page, "Corrected on this phone");
        phone.unroute("**/sending");
        held.get(0).resume();
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
        page.navigate(day.log());
        page.click(".steps summary:has-text('121 V')");
        assertThat(page.locator(".steps")).containsText("(was Leg A to neutral: 119 V). Typed wrong");
    }

    private static void signs(Page page, String name, String trade) {
        page.fill("input[name=name]:visible", name);
        page.fill("input[name=trade]:visible", trade);
        page.tap(".thumbs .done");
    }

    private static void nowSigns(Page page, String part) {
        assertThat(page.locator(".now:visible form:visible b").first()).containsText(part);
    }

    @Test
    void whoIsNotOnSiteDoesNotSignWithoutSignalUnlessSomebodySaysThatTheyAreHere() {
        Page page = withoutSignalAfter("3");
        signs(page, "Perrin", "person in charge");
        assertThat(page.locator(".phone-here .wrong"))
                .containsText("Perrin is not among the people on site (Tamsin), as far as this phone knows.");
        assertThat(page.locator("[name=isHere]")).isFocused();
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
        PageChecks.findings(page, "day-log-not-on-site").forEach(findings::add);
        page.setViewportSize(PageChecks.PHONE, 844);
        signs(page, "Tamsin", "person in charge");
        assertThat(page.locator("#phone-waiting li")).hasCount(1);
        nowSigns(page, "customer");
        signs(page, " tamsin", "owner");
        assertThat(page.locator(".now:visible .wrong")).containsText("sign each for themselves");
        signs(page, "Perrin", "");
        assertThat(page.locator(".now:visible .wrong")).containsText("Write the trade");
        signs(page, "Perrin", "owner");
        page.check("[name=isHere]:visible");
        page.tap(".thumbs .done");
        standsAt(page, "Step 4");
        sent(page);
        assertThat(page.locator("#step-form")).hasAttribute("action", day.log() + "/steps/4/done");
        page.navigate(day.log() + "/people");
        assertThat(page.locator("main")).containsText("Perrin, owner since");
    }

    @Test
    void whoWasWrittenDownOnThisPhoneWithoutSignalSignsThere() {
        Page page = withoutSignalAfter("3");
        page.navigate(day.log() + "/people");
        page.fill("#r-name", "Perrin");
        page.fill("#r-role", "owner");
        page.tap("button:has-text('Write them down')");
        says(page, "Somebody came, ");
        page.navigate(day.log());
        signs(page, "Tamsin", "person in charge");
        nowSigns(page, "customer");
        signs(page, "perrin", "owner");
        standsAt(page, "Step 4");
        sent(page);
        assertThat(page.locator("#step-form")).hasAttribute("action", day.log() + "/steps/4/done");
    }

    @Test
    void whoDidTheWorkDoesNotCheckItWithoutSignal() {
        Page page = withoutSignalAfter("8");
        signs(page, "licensed electrician", "electrician");
        assertThat(page.locator(".now:visible .wrong")).containsText("did the work and signed H2");
        assertThat(page.locator("#phone-waiting li")).hasCount(0);
    }
}
