package org.plumbrow.browser;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.Response;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Follows every link from where a person lands. Pages of one pattern (the same address but for ids and values) are
 * opened a few times; the first of each pattern is checked in full at phone and desktop width.
 */
final class Walk {

    static final int PHONE = 390;
    static final int DESK = 1440;
    private static final int PER_PATTERN = 2;
    private static final Pattern ID = Pattern.compile("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}");
    private static final Pattern TOKEN = Pattern.compile("/[A-Za-z0-9_-]{27,}");

    private final BrowserContext browser;
    private final String base;
    private final String who;
    private final Set<String> checkedPatterns;
    private final Map<String, Integer> seen = new HashMap<>();
    private final Set<String> queued = new HashSet<>();
    private final Deque<String> toVisit = new ArrayDeque<>();
    private final List<String> findings = new ArrayList<>();

    /** @param checkedPatterns patterns that were checked in full already; grows */
    Walk(BrowserContext browser, String base, String who, Set<String> checkedPatterns) {
        this.browser = browser;
        this.base = base;
        this.who = who;
        this.checkedPatterns = checkedPatterns;
    }

    List<String> from(String... starts) {
        for (String start : starts) {
            queue(start, "start");
        }
        Page page = browser.newPage();
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") || message.type().equals("warning")) {
                findings.add(who + " " + page.url() + ": console: " + message.text());
            }
        });
        page.onPageError(error -> findings.add(who + " " + page.url() + ": script: " + error));
        while (!toVisit.isEmpty()) {
            visit(page, toVisit.poll());
        }
        page.close();
        return findings;
    }

    Set<String> patterns() {
        return seen.keySet();
    }

    private void visit(Page page, String address) {
        String pattern = pattern(address);
        if (seen.merge(pattern, 1, Integer::sum) > PER_PATTERN) {
            return;
        }
        APIResponse head = browser.request().get(base + address);
        String type = head.headers().getOrDefault("content-type", "");
        if (head.status() >= 400) {
            findings.add(who + " " + address + ": answered " + head.status());
            return;
        }
        if (!type.startsWith("text/html")) {
            return;
        }
        try {
            Response response = page.navigate(base + address);
            if (response == null || response.status() >= 400) {
                findings.add(who + " " + address + ": answered " + (response == null ? "nothing" : response.status()));
                return;
            }
            check(page, address, pattern);
            for (String link : PageChecks.strings(page.evaluate(
                    "() => [...document.querySelectorAll('a[href]')].map(a => a.getAttribute('href'))"))) {
                queue(link, address);
            }
        } catch (PlaywrightException broken) {
            findings.add(who + " " + address + ": " + broken.getMessage());
        }
    }

    private void check(Page page, String address, String pattern) {
        if (!checkedPatterns.add(pattern)) {
            return;
        }
        for (int width : new int[] {DESK, PHONE}) {
            page.setViewportSize(width, width == PHONE ? 844 : 900);
            PageChecks.findings(page, width)
                    .forEach(found -> findings.add(who + " " + address + " at " + width + ": " + found));
            keepPicture(page, pattern, width);
        }
        page.setViewportSize(DESK, 900);
    }

    private void keepPicture(Page page, String pattern, int width) {
        String folder = System.getProperty("plumbrow.screenshots");
        if (folder != null && !folder.isBlank()) {
            String name = who + pattern.replaceAll("[^A-Za-z0-9]+", "-") + "-" + width + ".png";
            page.screenshot(
                    new Page.ScreenshotOptions().setPath(Path.of(folder, name)).setFullPage(true));
        }
    }

    private void queue(String link, String from) {
        int mark = link.indexOf('#');
        String address = mark < 0 ? link : link.substring(0, mark);
        if (address.isEmpty() && mark == 0) {
            return;
        }
        if (address.startsWith(base)) {
            address = address.substring(base.length());
        }
        if (address.startsWith("?")) {
            address = from.replaceAll("\\?.*", "") + address;
        }
        if (address.startsWith("/") && !address.startsWith("//") && queued.add(address)) {
            toVisit.add(address);
        }
    }

    static String pattern(String address) {
        String plain = ID.matcher(address).replaceAll("{id}");
        plain = TOKEN.matcher(plain).replaceAll("/{token}");
        String[] parts = plain.split("\\?", 2);
        if (parts.length == 1) {
            return parts[0];
        }
        return parts[0] + "?" + parts[1].replaceAll("=[^&]*", "");
    }
}
