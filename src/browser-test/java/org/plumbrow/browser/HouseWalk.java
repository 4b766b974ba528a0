package org.plumbrow.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What holds for the whole house, seen in a real browser on the demo branch: without script, by keyboard, at the door. */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = {
            "plumbrow.demo=true",
            "plumbrow.demo.password=" + HouseWalk.PASSWORD,
            "plumbrow.data-dir=target/demo-browser-test"
        })
class HouseWalk {

    static final String PASSWORD = "orchard-lantern-walnut-47";

    @LocalServerPort
    int port;

    private String base() {
        return "http://localhost:" + port;
    }

    private BrowserContext fresh(ColorScheme scheme, boolean script) {
        return Chromium.browser()
                .newContext(
                        new Browser.NewContextOptions().setColorScheme(scheme).setJavaScriptEnabled(script));
    }

    private void signIn(BrowserContext browser, String name) {
        Page page = browser.newPage();
        page.navigate(base() + "/sign-in");
        page.fill("input[name=email]", name + "@quillback.example");
        page.fill("input[name=password]", PASSWORD);
        page.click("main button");
        assertThat(page.url()).doesNotContain("sign-in");
        page.close();
    }

    @Test
    void theSignInPageIsAsItShouldBe() {
        try (BrowserContext browser = fresh(ColorScheme.DARK, true)) {
            assertThat(new Walk(browser, base(), "nobody", new HashSet<>()).from("/sign-in"))
                    .isEmpty();
        }
    }

    @Test
    void withoutScriptAPersonSignsInAndReachesEveryPlaceOfTheRow() {
        try (BrowserContext browser = fresh(ColorScheme.LIGHT, false)) {
            signIn(browser, "ines");
            Page page = browser.newPage();
            page.navigate(base() + "/");
            List<String> places = page.locator(".places a").all().stream()
                    .map(link -> link.getAttribute("href"))
                    .toList();
            assertThat(places).contains("/look-ahead", "/projects", "/cutovers", "/crews");
            for (String place : places) {
                assertThat(page.navigate(base() + place).status()).isEqualTo(200);
                assertThat(page.locator("h1").count()).isEqualTo(1);
            }
        }
    }

    @Test
    void byKeyboardTheFirstStopSkipsToThePageAndEachStopIsSeen() {
        try (BrowserContext browser = fresh(ColorScheme.LIGHT, true)) {
            signIn(browser, "tamsin");
            Page page = browser.newPage();
            page.navigate(base() + "/projects");
            page.keyboard().press("Tab");
            assertThat(page.evaluate("() => document.activeElement.className")).isEqualTo("skip");
            for (int stop = 0; stop < 25; stop++) {
                page.keyboard().press("Tab");
                Object ring = page.evaluate(
                        "() => { const e = document.activeElement; return e === document.body || getComputedStyle(e).outlineStyle !== 'none'; }");
                assertThat(ring).as("focus ring at stop " + stop).isEqualTo(true);
            }
        }
    }
}
