package org.plumbrow.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.SelectOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.plumbrow.TestWorld;
import org.plumbrow.demo.LoadedDemo;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Without script: signing in, going around, and a new branch's first job from its utility to its dates. */
@LoadedDemo
class NoScriptTest {

    @LocalServerPort
    int port;

    @Autowired
    TestWorld world;

    @Test
    void aPersonSignsInAndReachesEveryPlaceOfTheRow() {
        try (BrowserContext browser = new Visits(port).withoutScript("ines")) {
            Page page = browser.newPage();
            page.navigate("/");
            List<String> places = page.locator(".places a").all().stream()
                    .map(link -> link.getAttribute("href"))
                    .toList();
            assertThat(places).contains("/look-ahead", "/projects", "/cutovers", "/crews");
            for (String place : places) {
                assertThat(page.navigate(place).status()).isEqualTo(200);
                assertThat(page.locator("h1").count()).isEqualTo(1);
            }
        }
    }

    @Test
    void theFormsOfAFirstJobAreAnswered() {
        String branch = world.branch().code();
        try (BrowserContext browser = new Visits(port).withoutScript("maren")) {
            Page page = browser.newPage();
            page.navigate("/settings/utilities/new?branch=" + branch);
            page.fill("#name", "Brook Power");
            page.fill("#noticeWorkingDays", "5");
            page.locator("[name=appointmentWeekdays]").first().check();
            page.locator("[name=workingWeekdays]").first().check();
            send(page, "/settings/utilities/new");
            page.navigate("/crews/new");
            page.fill("#name", "Crew 1");
            page.fill("#size", "4");
            page.locator("[name=skills]").all().forEach(Locator::check);
            page.fill("#from", "2026-01-05");
            send(page, "/crews/new");
            String project = aProject(page);
            anItem(page, project);
            aPlan(page);
            page.navigate(project + "/schedule");
            assertThat(page.locator("h1").innerText()).contains("Orchard Lane");
        }
    }

    private static String aProject(Page page) {
        page.navigate("/projects/new");
        page.fill("#name", "Orchard Lane");
        page.fill("#customer", "Marit");
        page.selectOption("#utility", new SelectOption().setLabel("Brook Power"));
        page.fill("#systemKwDc", "9.6 kW");
        page.fill("#systemKwAc", "7.6");
        page.selectOption("#arrays0\\.mounting", new SelectOption().setIndex(1));
        page.fill("#arrays0\\.modules", "24");
        page.fill("#arrays0\\.moduleW", "400");
        send(page, "/projects/new");
        String project = page.url().replaceAll(".*(/projects/[0-9a-f-]+).*", "$1");
        page.navigate(project + "/contacts/add");
        page.fill("#name", "Nils");
        send(page, project + "/contacts/add");
        assertThat(page.locator("main").innerText()).contains("Nils");
        return project;
    }

    private static void anItem(Page page, String project) {
        page.navigate(project + "/gate");
        List<String> items = page.locator("main a[href*='gate-items']").all().stream()
                .map(link -> link.getAttribute("href"))
                .toList();
        String confirmed = items.stream()
                .filter(item -> {
                    page.navigate(item);
                    return page.locator("[name=confirmed]").count() == 1
                            && page.locator("input[type=file]").count() == 0;
                })
                .findFirst()
                .orElseThrow();
        page.check("[name=confirmed]");
        send(page, confirmed);
        page.navigate(confirmed);
        assertThat(page.locator("main").innerText()).contains("Confirmed");
    }

    /** Nothing is signed yet, so there is nothing to plan: the page says so. */
    private static void aPlan(Page page) {
        page.navigate("/look-ahead");
        page.locator("form[action*='recompute'] button").click();
        assertThat(page.locator("main").innerText()).containsAnyOf("plan", "Plan");
    }

    /** The button of the page's form, and an answer that is another page or says what was done. */
    private static void send(Page page, String from) {
        page.locator("main form[method=post] .acts button").first().click();
        boolean answered =
                !page.url().endsWith(from) || page.locator("main [role=status]").count() > 0;
        assertThat(answered)
                .as(from + " is answered: " + page.locator("main").innerText())
                .isTrue();
    }
}
