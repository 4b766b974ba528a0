package org.plumbrow.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.plumbrow.TestWorld;
import org.plumbrow.demo.LoadedDemo;
import org.plumbrow.evidence.MadeUpPhoto;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The survey where there is no signal: on a phone's screen, with the network of the whole browser taken away. */
@LoadedDemo
@Timeout(value = 3, unit = TimeUnit.MINUTES)
class SurveyOfflineTest {

    @LocalServerPort
    int port;

    @Autowired
    TestWorld world;

    private final List<String> findings = new ArrayList<>();
    private BrowserContext phone;
    private String survey;

    /** A project of its own in a branch of its own, with all pages of its survey on the phone. */
    @BeforeEach
    void aProjectWhoseSurveyIsOnThePhone() {
        phone = new Visits(port).of("maren");
        Page page = phone.newPage();
        page.navigate("/projects/new?branch=" + world.branch().code());
        page.fill("#name", "Orchard Lane");
        page.fill("#customer", "Marit");
        page.click("main .acts button");
        survey = page.url().replaceAll(".*(/projects/[0-9a-f-]+).*", "$1") + "/survey";
        open(page, "");
        page.close();
    }

    @AfterEach
    void close() {
        phone.close();
        assertThat(findings).isEmpty();
    }

    private void open(Page page, String part) {
        page.navigate(survey + part);
        assertThat(page.locator("#phone-pages")).containsText("These pages are on this phone");
    }

    private Page opened(String part) {
        Page page = phone.newPage();
        page.onPageError(error -> findings.add("script: " + error));
        page.navigate(survey + part);
        return page;
    }

    private static void says(Page page, String sentence) {
        assertThat(page.locator("#phone")).containsText(sentence);
    }

    private static void save(Page page) {
        page.click("#survey-form button[value=stay]");
    }

    private void looksGood(Page page, String name) {
        PageChecks.findings(page, "survey-" + name).forEach(one -> findings.add(name + ": " + one));
    }

    private long linesOfTheJournal(String words) {
        Page page = phone.newPage();
        page.navigate(survey.replace("/survey", "/journal"));
        long lines = page.locator("main").innerText().split(Pattern.quote(words), -1).length - 1L;
        page.close();
        return lines;
    }

    @Test
    void whatIsTypedWithoutSignalOutlivesReloadAndKilledPageAndIsStoredOnce() {
        phone.setOffline(true);
        Page page = opened("/routes");
        says(page, "Without signal: this page is as of");
        page.fill("#route\\.1\\.length_ft", "48");
        page.fill("#route\\.2\\.length_ft", "60");
        says(page, "not sent yet");
        page.reload();
        assertThat(page.locator("#route\\.2\\.length_ft")).hasValue("60");
        looksGood(page, "kept");
        page.close();
        page = opened("/routes");
        assertThat(page.locator("#route\\.1\\.length_ft")).hasValue("48");
        save(page);
        says(page, "No signal. Kept on this phone");
        page.close();
        Page other = opened("/access");
        says(other, "Routes: Orchard Lane: Kept on this phone");
        says(other, "It goes out by itself");
        phone.setOffline(false);
        says(other, "Sent ");
        other.close();
        page = opened("/routes");
        says(page, "Sent ");
        assertThat(page.locator("#route\\.2\\.length_ft")).hasValue("60");
        assertThat(linesOfTheJournal("Survey, routes")).isEqualTo(1);
    }

    @Test
    void anAnswerThatWasLostIsAskedForAgainAndCountsOnce() {
        Page page = opened("/access");
        AtomicInteger tries = Signal.losesTheFirstAnswer(phone);
        page.fill("#lane", "gravel");
        save(page);
        says(page, "No signal. Kept on this phone");
        page.reload();
        says(page, "Sent ");
        assertThat(tries.get()).isEqualTo(2);
        assertThat(page.locator("#lane")).hasValue("gravel");
        assertThat(page.locator("[name=version]").first()).hasValue("1");
        assertThat(linesOfTheJournal("Survey, access")).isEqualTo(1);
    }

    @Test
    void whoComesSecondSeesBothAndChooses() {
        Page mine = opened("/access");
        says(mine, "These pages are on this phone");
        phone.setOffline(true);
        mine.fill("#lane", "mud");
        mine.fill("#laydown", "behind the barn");
        save(mine);
        says(mine, "No signal");
        try (BrowserContext second = new Visits(port).withoutScript("maren")) {
            Page theirs = second.newPage();
            theirs.navigate(survey + "/access");
            theirs.fill("#lane", "gravel");
            save(theirs);
            assertThat(theirs.locator("main [role=status]").first()).containsText("kept");
        }
        phone.setOffline(false);
        says(mine, "Someone else changed this: look at both.");
        assertThat(mine.locator("#phone-both h2")).containsText("Maren changed this on");
        looksGood(mine, "both");
        mine.click("#phone-both button");
        assertThat(mine.locator("#phone-both .wrong")).isVisible();
        mine.locator("#phone-both label", new Page.LocatorOptions().setHasText("Yours: mud"))
                .click();
        mine.click("#phone-both button");
        says(mine, "Sent ");
        mine.navigate(survey + "/access");
        assertThat(mine.locator("#lane")).hasValue("mud");
        assertThat(mine.locator("#laydown")).hasValue("behind the barn");
    }

    @Test
    void whatTheServerRefusesStaysOnThePhoneWithTheSentenceAtItsField() {
        Page page = opened("/service");
        phone.setOffline(true);
        page.fill("#main_a", "lots");
        save(page);
        says(page, "No signal");
        phone.setOffline(false);
        says(page, "Not sent: look at what is marked");
        assertThat(page.locator(".field.bad .wrong")).containsText("“lots” is no reading");
        page.reload();
        assertThat(page.locator("#main_a")).hasValue("lots");
        says(page, "“lots” is no reading");
        looksGood(page, "refused");
        page.fill("#main_a", "200");
        save(page);
        says(page, "Sent ");
        assertThat(page.locator(".field.bad")).hasCount(0);
    }

    @Test
    void aReadingOutsideItsLimitsIsAskedAboutWithoutSignal() {
        phone.setOffline(true);
        Page page = opened("/service");
        page.fill("#main_a", "9");
        page.press("#main_a", "Tab");
        Locator why = page.locator("[name='main_a.why']");
        assertThat(page.locator(".phone-ask .asked")).containsText("9 is outside");
        why.fill("an old cottage");
        page.check("[name='main_a.twice']");
        save(page);
        says(page, "No signal");
        page.reload();
        assertThat(why).hasValue("an old cottage");
        phone.setOffline(false);
        says(page, "Sent ");
        page.navigate(survey + "/service");
        assertThat(why).hasValue("an old cottage");
        assertThat(page.locator(".field.ask")).hasCount(0);
    }

    @Test
    void anotherPersonOnTheSamePhoneNeitherSeesNorSendsIt() {
        Page page = opened("/access");
        says(page, "These pages are on this phone");
        phone.setOffline(true);
        page.fill("#lane", "mud");
        save(page);
        says(page, "No signal");
        phone.clearCookies();
        phone.setOffline(false);
        says(page, "It is sent once you have signed in");
        assertThat(page.locator("#phone-in")).isVisible();
        signIn("ines");
        page.bringToFront();
        Signal.isBack(page);
        says(page, "Somebody else is signed in here now");
        Page hers = phone.newPage();
        hers.navigate("/projects");
        String anyProject = hers.locator("main a[href^='/projects/0']").first().getAttribute("href");
        hers.navigate(anyProject.replaceAll("(/projects/[0-9a-f-]{36}).*", "$1") + "/survey/access");
        assertThat(hers.locator("#phone-pages")).containsText("These pages");
        assertThat(hers.locator("#phone-waiting li")).hasCount(0);
        phone.clearCookies();
        signIn("maren");
        Signal.isBack(page);
        says(page, "Sent ");
        assertThat(linesOfTheJournal("Survey, access")).isEqualTo(1);
    }

    private void signIn(String name) {
        Page page = phone.newPage();
        page.navigate("/sign-in");
        page.fill("input[name=email]", name + "@quillback.example");
        page.fill("input[name=password]", LoadedDemo.PASSWORD);
        page.click("main button");
        page.waitForURL(address -> !address.contains("sign-in"));
        page.close();
    }

    @Test
    void signingOutAsksAboutWhatIsNotSentAndTakesTheCopiesAway() {
        Page page = opened("/access");
        says(page, "These pages are on this phone");
        page.fill("#lane", "mud");
        says(page, "not sent yet");
        page.navigate("/you");
        page.click("form[action='/sign-out'] button");
        assertThat(page.locator("#phone-out")).containsText("Access: Orchard Lane");
        looksGood(page, "signing-out");
        page.click("#phone-out button >> nth=0");
        page.waitForURL("**/sign-in?out");
        assertThat(page.evaluate("async () => await caches.has('plumbrow-pages')"))
                .isEqualTo(false);
        signIn("maren");
        page.navigate(survey + "/access");
        assertThat(page.locator("#lane")).hasValue("mud");
        page.navigate("/you");
        page.click("form[action='/sign-out'] button");
        page.click("#phone-out button >> nth=1");
        page.waitForURL("**/sign-in?out");
        signIn("maren");
        page.navigate(survey + "/access");
        says(page, "These pages are on this phone");
        assertThat(page.locator("#lane")).hasValue("");
    }

    @Test
    void aPhotoWaitsAndIsSentOnce() {
        Page page = opened("/photos");
        says(page, "These pages are on this phone");
        phone.setOffline(true);
        page.setInputFiles("#photo-2", new FilePayload("meter.jpg", "image/jpeg", MadeUpPhoto.plain()));
        page.locator("form[data-phone-photo]", new Page.LocatorOptions().setHas(page.locator("#photo-2")))
                .locator("button")
                .click();
        says(page, "Photo of ");
        says(page, "No signal");
        looksGood(page, "photo");
        phone.setOffline(false);
        says(page, "Sent ");
        page.navigate(survey + "/photos");
        assertThat(page.locator("img.thumb-pic")).hasCount(1);
        assertThat(linesOfTheJournal("Survey: photo of")).isEqualTo(1);
    }

    @Test
    void withoutScriptThePartIsSavedAsEver() {
        try (BrowserContext plain = new Visits(port).withoutScript("maren")) {
            Page page = plain.newPage();
            page.navigate(survey + "/access");
            page.fill("#lane", "gravel");
            save(page);
            assertThat(page.locator("main [role=status]").first()).containsText("kept");
            assertThat(page.locator("#lane")).hasValue("gravel");
            assertThat(page.locator("#phone")).isHidden();
        }
    }
}
