package org.plumbrow.browser;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.options.RequestOptions;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Follows every link from where a person lands. Only what is new is looked at in the browser: a page with a kind of
 * element that no page at this route had before, seen by whomever. It stays in the branch where it began.
 */
final class Walk {

    private static final Logger LOG = LoggerFactory.getLogger(Walk.class);

    /** What all walks of a test have seen, and what they found. */
    static final class Seen {
        private final Map<String, Set<String>> kindsByRoute = new HashMap<>();
        private final Set<String> routes = new TreeSet<>();
        private final Set<String> lookedAt = new HashSet<>();
        private final List<String> findings = new ArrayList<>();
        private int looks;

        Set<String> routes() {
            return routes;
        }

        List<String> findings() {
            return findings;
        }

        int looks() {
            return looks;
        }

        boolean isNew(String route, Document html) {
            Set<String> kinds = html.select("body *").stream().map(Walk::kind).collect(Collectors.toSet());
            return kindsByRoute.computeIfAbsent(route, none -> new HashSet<>()).addAll(kinds);
        }
    }

    private final BrowserContext browser;
    private final Routes routes;
    private final String who;
    private final Seen seen;
    private final int perRoute;
    private final Page page;
    private boolean alone;
    private final Map<String, Integer> opened = new HashMap<>();
    private final Set<String> queued = new HashSet<>();
    private final Deque<String> toVisit = new ArrayDeque<>();

    /** @param perRoute how many pages at one route are asked for */
    Walk(BrowserContext browser, Routes routes, String who, Seen seen, int perRoute) {
        this.browser = browser;
        this.routes = routes;
        this.who = who;
        this.seen = seen;
        this.perRoute = perRoute;
        this.page = browser.newPage();
        page.onConsoleMessage(message -> {
            boolean asExpected = alone && message.text().contains("with a status of 4");
            if (!asExpected && (message.type().equals("error") || message.type().equals("warning"))) {
                found(page.url(), "console: " + message.text());
            }
        });
        page.onPageError(error -> found(page.url(), "script: " + error));
    }

    /** One page, not what it links to; a private link that has ended is a page too, and so is one that asks for more. */
    void alone(String address) {
        alone = true;
        from(address);
    }

    void from(String... starts) {
        for (String start : starts) {
            queue(start, start);
        }
        while (!toVisit.isEmpty()) {
            visit(toVisit.poll());
        }
    }

    private void visit(String address) {
        String route = routes.of(path(address)).orElse("");
        if (route.isEmpty()) {
            found(address, "no route of the program");
            return;
        }
        if (opened.merge(route + queryNames(address), 1, Integer::sum) <= perRoute) {
            open(address, route);
        }
    }

    private void open(String address, String route) {
        APIResponse answer =
                browser.request().get(address, RequestOptions.create().setMaxRedirects(0));
        if (answer.status() >= 300 && answer.status() < 400) {
            seen.routes.add(route);
            queue(answer.headers().get("location"), address);
            return;
        }
        if (answer.status() >= 400 && !(alone && (answer.status() == 404 || answer.status() == 422))) {
            found(address, "answered " + answer.status());
            return;
        }
        seen.routes.add(route);
        if (answer.headers().getOrDefault("content-type", "").startsWith("text/html")) {
            Document html = Jsoup.parse(answer.text());
            html.select("[style]").forEach(styled -> found(address, "inline style: " + styled.outerHtml()));
            if (!alone) {
                html.select("a[href]").forEach(link -> queue(link.attr("href"), address));
            }
            boolean first = seen.lookedAt.add(route);
            if (seen.isNew(route, html)) {
                look(address, route, first);
            }
        }
    }

    private void look(String address, String route, boolean first) {
        seen.looks++;
        LOG.debug("{} {} {}", seen.looks, who, address);
        try {
            page.navigate(address);
            PageChecks.findings(page, route + "-" + seen.looks + "-" + who).forEach(one -> found(address, one));
            if (first) {
                PageChecks.findingsInTheDark(page).forEach(one -> found(address, one));
            }
        } catch (PlaywrightException broken) {
            found(address, broken.getMessage());
        }
    }

    /** Said at once too: a long walk need not end before somebody begins to mend. */
    private void found(String address, String what) {
        String finding = who + " " + address + " " + what;
        seen.findings.add(finding);
        LOG.warn("{}", finding);
    }

    private void queue(String link, String from) {
        String address = link.replaceAll("#.*", "").replaceAll("^https?://localhost:\\d+", "");
        if (address.startsWith("?")) {
            address = path(from) + address;
        }
        boolean ours = address.matches("/(?!/|webjars).*") && !address.contains("branch=");
        if (ours && queued.add(address)) {
            toVisit.add(address);
        }
    }

    private static String path(String address) {
        return address.replaceAll("\\?.*", "");
    }

    private static String queryNames(String address) {
        int mark = address.indexOf('?');
        return mark < 0
                ? ""
                : Arrays.stream(address.substring(mark + 1).split("&"))
                        .map(part -> part.replaceAll("=.*", ""))
                        .sorted()
                        .collect(Collectors.joining("&", "?", ""));
    }

    private static String kind(Element element) {
        return element.tagName() + "." + element.className() + element.attr("type") + element.attr("role");
    }
}
