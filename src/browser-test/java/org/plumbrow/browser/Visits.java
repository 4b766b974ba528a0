package org.plumbrow.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import org.plumbrow.demo.LoadedDemo;

/** Browsers of people at the demo branch, each with its own cookies. */
record Visits(int port) {

    String base() {
        return "http://localhost:" + port;
    }

    BrowserContext ofNobody() {
        return fresh(true);
    }

    /** @param name of a person of {@code demo-seed/people.csv}, in lower case */
    BrowserContext of(String name) {
        return signedIn(name, true);
    }

    BrowserContext withoutScript(String name) {
        return signedIn(name, false);
    }

    private BrowserContext signedIn(String name, boolean script) {
        BrowserContext browser = fresh(script);
        signIn(browser.newPage(), name);
        return browser;
    }

    /** On the page that asks for it, or on the sign-in page. */
    static void signIn(Page page, String name) {
        if (!page.url().contains("/sign-in")) {
            page.navigate("/sign-in");
        }
        page.fill("input[name=email]", name + "@quillback.example");
        page.fill("input[name=password]", LoadedDemo.PASSWORD);
        page.click("main button");
        assertThat(page.url()).as(name + " is signed in").doesNotContain("sign-in");
    }

    private BrowserContext fresh(boolean script) {
        BrowserContext browser = Chromium.browser()
                .newContext(new Browser.NewContextOptions()
                        .setBaseURL(base())
                        .setViewportSize(PageChecks.DESK, 900)
                        .setJavaScriptEnabled(script));
        if (script) {
            browser.addInitScript(PageChecks.AXE);
        }
        return browser;
    }
}
