package org.plumbrow.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import org.junit.jupiter.api.Test;
import org.plumbrow.demo.LoadedDemo;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A job is dragged to another day: the effect is shown, nothing is saved. The same place is reached without script. */
@LoadedDemo
class CrewCalendarDragTest {

    @LocalServerPort
    int port;

    @Test
    void theDropShowsWhatItWouldDo() {
        try (BrowserContext browser = new Visits(port).of("ines")) {
            Page page = browser.newPage();
            Locator bar = aJob(page);
            BoundingBox from = bar.boundingBox();
            Locator day = page.locator("th[data-day]").last();
            String date = day.getAttribute("data-day");
            BoundingBox to = day.boundingBox();
            page.mouse().move(from.x + 5, from.y + 5);
            page.mouse().down();
            page.mouse().move(from.x + 30, from.y + 5);
            page.mouse().move(to.x + 5, from.y + 5);
            assertThat(page.locator(".dropsays").innerText()).contains(day.getAttribute("data-words"), "morning");
            page.mouse().up();
            page.waitForURL("**/effect?*");
            assertThat(page.url()).contains("day=" + date, "half=MORNING", "crewId=");
            assertThat(page.locator("main").innerText()).contains("Nothing is saved yet.");
            assertThat(page.locator("form[action$='/fix'] button").count()).isEqualTo(1);
        }
    }

    @Test
    void escapeLeavesEverythingWhereItWas() {
        try (BrowserContext browser = new Visits(port).of("ines")) {
            Page page = browser.newPage();
            BoundingBox from = aJob(page).boundingBox();
            String here = page.url();
            page.mouse().move(from.x + 5, from.y + 5);
            page.mouse().down();
            page.mouse().move(from.x + 90, from.y + 5);
            assertThat(page.locator(".dropghost").count()).isEqualTo(1);
            page.keyboard().press("Escape");
            page.mouse().up();
            assertThat(page.locator(".dropghost").count()).isZero();
            assertThat(page.url()).isEqualTo(here);
        }
    }

    @Test
    void withoutScriptAJobIsALinkToTheForm() {
        try (BrowserContext browser = new Visits(port).withoutScript("ines")) {
            Page page = browser.newPage();
            aJob(page).click();
            assertThat(page.url()).endsWith("/move");
            page.locator("form[action$='/effect'] button").click();
            assertThat(page.locator("main").innerText()).contains("Nothing is saved yet.");
        }
    }

    @Test
    void onAPhoneAListStandsInItsPlace() {
        try (BrowserContext browser = new Visits(port).of("ines")) {
            Page page = browser.newPage();
            page.setViewportSize(PageChecks.PHONE, 844);
            page.navigate("/look-ahead/crews");
            assertThat(page.locator("#crews").isVisible()).isFalse();
            assertThat(page.locator(".hand li a").first().isVisible()).isTrue();
        }
    }

    /** Within the first four weeks that have one that can be moved. */
    private static Locator aJob(Page page) {
        page.navigate("/look-ahead/crews");
        Locator bar = page.locator("#crews a[data-move]");
        for (int tries = 0; bar.count() == 0 && tries < 4; tries++) {
            page.locator("a[rel=next]").click();
        }
        bar.first().scrollIntoViewIfNeeded();
        return bar.first();
    }
}
