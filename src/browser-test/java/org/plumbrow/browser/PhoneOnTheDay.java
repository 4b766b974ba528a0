package org.plumbrow.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Timeout;
import org.plumbrow.TestWorld;
import org.plumbrow.cutover.daylog.CutoverRoad;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A phone on the day of an outage; whatever a page's script complains of, or a look at it finds, fails the test. */
abstract class PhoneOnTheDay {

    @LocalServerPort
    int port;

    @Autowired
    TestWorld world;

    @Autowired
    CutoverRoad road;

    final List<String> findings = new ArrayList<>();
    BrowserContext phone;
    OutageToday day;

    /** A browser that is closed while a page of it comes anew has been seen to wait for ever, too. */
    @AfterEach
    @Timeout(value = 1, unit = TimeUnit.MINUTES)
    void close() {
        for (Page page : phone.pages()) {
            try {
                left(page);
            } catch (PlaywrightException onItsWay) {
                // It is on its way elsewhere already.
            }
        }
        phone.close();
        assertThat(findings).isEmpty();
    }

    /** As closed; a tab that is closed itself has kept the browser waiting for ever. */
    static void left(Page page) {
        page.navigate("about:blank");
    }

    Page opened(String address) {
        return opened(phone, address);
    }

    Page opened(BrowserContext on, String address) {
        Page page = on.newPage();
        page.onPageError(error -> findings.add("script: " + error));
        page.navigate(address);
        return page;
    }

    /** A tap with signal: the page comes anew once the server has it. */
    static void tapped(Page page, Locator button) {
        page.evaluate("() => { window.before = true; }");
        button.click();
        page.waitForFunction("() => !window.before && document.readyState === 'complete'");
    }

    static void says(Page page, String sentence) {
        assertThat(page.locator("#phone")).containsText(sentence);
    }
}
