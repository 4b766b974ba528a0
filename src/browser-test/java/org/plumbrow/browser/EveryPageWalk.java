package org.plumbrow.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;

/**
 * Every page that somebody of the demo branch is led to, in a real browser at phone and desktop width: no finding of
 * axe, no message in the console, no sideways scroll. A page that a room adds is walked without touching this test.
 * Run by name, {@code mvn -Pbrowser test -Dtest=EveryPageWalk}: it takes many minutes.
 */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = {
            "plumbrow.demo=true",
            "plumbrow.demo.password=" + EveryPageWalk.PASSWORD,
            "plumbrow.data-dir=target/demo-browser-test"
        })
class EveryPageWalk {

    static final String PASSWORD = "orchard-lantern-walnut-47";
    private static final List<String> PEOPLE = List.of("ines", "tamsin", "dov", "jory", "maren");

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
    void everyPageOfEveryPersonIsAsItShouldBe() {
        Set<String> checked = new HashSet<>();
        List<String> findings = new ArrayList<>();
        for (String person : PEOPLE) {
            try (BrowserContext browser = fresh(ColorScheme.LIGHT, true)) {
                signIn(browser, person);
                findings.addAll(new Walk(browser, base(), person, checked).from("/", "/you"));
            }
        }
        assertThat(checked.size()).as("kinds of pages").isGreaterThan(30);
        assertThat(findings).isEmpty();
    }
}
