package org.plumbrow.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.plumbrow.demo.LoadedDemo;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The chief pages by keyboard alone, at phone and desktop width. */
@LoadedDemo
class KeyboardTest {

    private static final int MOST_STOPS = 90;
    private static final String SEEN = """
            () => {
              const e = document.activeElement;
              if (e === document.body) return 'the page itself';
              const style = getComputedStyle(e);
              const ring = style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2;
              const box = e.getBoundingClientRect();
              const inside = box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth;
              const spots = [...e.getClientRects()].flatMap(r => [[r.left + 2, r.top + 2], [r.left + r.width / 2, r.top + r.height / 2],
                [r.right - 2, r.bottom - 2]]);
              const shown = spots.some(([x, y]) => {
                const at = document.elementFromPoint(x, y);
                return at && (e.contains(at) || at.contains(e));
              });
              return ring && inside && shown ? '' : e.outerHTML.slice(0, 100)
                + (ring ? '' : ' has no ring') + (inside ? '' : ' is outside') + (shown ? '' : ' is covered');
            }
            """;

    @LocalServerPort
    int port;

    private final List<String> findings = new ArrayList<>();

    @Test
    void whoeverSignsInReachesTheFieldsAndTheButton() {
        try (BrowserContext browser = new Visits(port).ofNobody()) {
            reaches(browser.newPage(), "/sign-in", "main button");
        }
        assertThat(findings).isEmpty();
    }

    @Test
    void aProjectManagerReachesTheChiefActOfEachPage() {
        try (BrowserContext browser = new Visits(port).of("tamsin")) {
            Page page = browser.newPage();
            reaches(page, "/projects", "main tbody th a");
            String project = first(page, "main tbody th a");
            reaches(page, project, "main .note .button");
            reaches(page, project + "/gate", "main .list a, main tbody th a");
            reaches(page, first(page, "main a[href*='gate-items']"), "main form button");
            reaches(page, project + "/contract", "main .acts button");
            reaches(page, project + "/schedule", "main tbody th a");
            reaches(page, "/cutovers", "main tbody th a");
            reaches(page, first(page, "main tbody th a"), "main a.button, main button");
        }
        assertThat(findings).isEmpty();
    }

    @Test
    void aManagerReachesTheChiefActOfEachPage() {
        try (BrowserContext browser = new Visits(port).of("ines")) {
            Page page = browser.newPage();
            reaches(page, "/look-ahead", "main .list a, main .acts a");
            reaches(page, "/look-ahead/crews", "#crews a[data-move], .hand li a");
            reaches(page, "/projects/intake", "main button");
            reaches(page, "/people/invite", "main button");
            reaches(page, "/settings/branch", "main button");
            reaches(page, "/crews/new", "main button");
        }
        assertThat(findings).isEmpty();
    }

    @Test
    void aCrewLeadReachesTheNextWeek() {
        try (BrowserContext browser = new Visits(port).of("jory")) {
            reaches(browser.newPage(), "/crews/week", "main a");
        }
        assertThat(findings).isEmpty();
    }

    private static String first(Page page, String link) {
        return page.locator(link).first().getAttribute("href");
    }

    /** Skip link first; from it into the page; then stop by stop, each with a ring that is seen, to the act. */
    private void reaches(Page page, String address, String act) {
        for (int width : new int[] {PageChecks.PHONE, PageChecks.DESK}) {
            page.setViewportSize(width, width == PageChecks.PHONE ? 844 : 900);
            page.navigate(address);
            page.keyboard().press("Tab");
            String here = address + " at " + width + " px: ";
            if (!Boolean.TRUE.equals(page.evaluate("() => document.activeElement.className === 'skip'"))) {
                findings.add(here + "the skip link is not the first stop");
            }
            page.keyboard().press("Enter");
            walk(page, act, here);
        }
    }

    private void walk(Page page, String act, String here) {
        for (int stop = 0; stop < MOST_STOPS; stop++) {
            page.keyboard().press("Tab");
            String wrong = String.valueOf(page.evaluate(SEEN));
            if (!wrong.isEmpty()) {
                findings.add(here + wrong);
            }
            if (Boolean.TRUE.equals(page.evaluate("act => document.activeElement.matches(act)", act))) {
                return;
            }
        }
        findings.add(here + act + " was not reached");
    }
}
