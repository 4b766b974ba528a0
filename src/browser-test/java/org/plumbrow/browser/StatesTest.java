package org.plumbrow.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.plumbrow.TestWorld;
import org.plumbrow.demo.LoadedDemo;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The pages that nobody wants to see: as accessible as the others, and each says what to do. */
@LoadedDemo
class StatesTest {

    @LocalServerPort
    int port;

    @Autowired
    TestWorld world;

    private final List<String> findings = new ArrayList<>();

    private Page asIs(BrowserContext browser, String address, int status, String heading) {
        Page page = browser.newPage();
        Response answer = page.navigate(address);
        assertThat(answer.status()).as(address).isEqualTo(status);
        shows(page, heading);
        return page;
    }

    private void shows(Page page, String heading) {
        assertThat(page.locator("h1").innerText()).contains(heading);
        PageChecks.findings(page, "state-" + heading).forEach(one -> findings.add(page.url() + " " + one));
    }

    @Test
    void notFoundForbiddenAndBrokenPages() {
        try (BrowserContext browser = new Visits(port).of("jory")) {
            asIs(browser, "/projects/" + UUID.randomUUID(), 404, "nothing at this address");
            asIs(browser, "/no-such-place", 404, "nothing at this address");
            asIs(browser, "/settings", 403, "not open to your role");
            asIs(browser, "/breakdown/work", 500, "went wrong on our side");
            asIs(browser, "/breakdown/page", 500, "went wrong on our side");
            asIs(browser, "/look-ahead/recompute", 405, "not understood");
        }
        try (BrowserContext nobody = new Visits(port).ofNobody()) {
            asIs(nobody, "/reset/there-is-no-such-reset", 404, "This link has ended");
            asIs(nobody, "/invited/there-is-no-such-invitation", 404, "This link has ended");
        }
        assertThat(findings).isEmpty();
    }

    @Test
    void aListWithoutAHitSaysSo() {
        try (BrowserContext browser = new Visits(port).of("tamsin")) {
            Page page = browser.newPage();
            page.navigate("/projects?q=zzzz-no-such-project");
            assertThat(page.locator("main .note").innerText()).isNotBlank();
            PageChecks.findings(page, "state-no-hit").forEach(findings::add);
        }
        assertThat(findings).isEmpty();
    }

    @Test
    void aRefusedFormSaysSoFirstAndKeepsWhatWasTyped() {
        try (BrowserContext browser = new Visits(port).of("tamsin")) {
            Page page = browser.newPage();
            page.navigate("/projects/new");
            page.fill("#customer", "Marit of the orchard");
            page.fill("#systemKwDc", "many");
            page.fill("#promisedOn", "2020-01-06");
            page.click("main .acts button");
            assertThat(page.title()).startsWith("Error: ");
            assertThat(page.evaluate("() => document.activeElement.getAttribute('role')"))
                    .isEqualTo("alert");
            assertThat(page.locator("main [role=alert] a").count()).isGreaterThanOrEqualTo(2);
            page.locator("main [role=alert] a").first().click();
            assertThat(page.evaluate("() => document.activeElement.id")).isEqualTo("name");
            assertThat(page.inputValue("#customer")).isEqualTo("Marit of the orchard");
            assertThat(page.inputValue("#systemKwDc")).isEqualTo("many");
            shows(page, page.locator("h1").innerText());
        }
        assertThat(findings).isEmpty();
    }

    @Test
    void whoComesSecondSeesTheirsBesideYoursAndChooses() {
        String branch = world.branch().code();
        try (BrowserContext browser = new Visits(port).of("maren")) {
            Page mine = browser.newPage();
            mine.navigate("/projects/new?branch=" + branch);
            mine.fill("#name", "Orchard Lane");
            mine.fill("#customer", "Marit");
            mine.click("main .acts button");
            String project = mine.url().replaceAll(".*(/projects/[0-9a-f-]+).*", "$1");
            mine.navigate(project + "/name");
            Page theirs = browser.newPage();
            theirs.navigate(project + "/name");
            theirs.fill("#name", "Orchard Lane North");
            theirs.click("main .acts button");
            mine.fill("#name", "Orchard Lane South");
            mine.click("main .acts button");
            shows(mine, "after you opened it");
            assertThat(mine.locator("main form").innerText()).contains("Orchard Lane North", "Orchard Lane South");
            mine.check("input[value='Orchard Lane South']");
            mine.click("main .acts button");
            mine.navigate(project);
            assertThat(mine.title()).contains("Orchard Lane South");
        }
        assertThat(findings).isEmpty();
    }
}
