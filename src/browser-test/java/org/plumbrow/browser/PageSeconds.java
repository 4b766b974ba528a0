package org.plumbrow.browser;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Request;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.DoubleSummaryStatistics;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** How long the pages of a walk took to come, from the asking to the last byte. */
final class PageSeconds {

    private final Map<String, DoubleSummaryStatistics> pages = new TreeMap<>();

    static PageSeconds in(BrowserContext browser) {
        PageSeconds seconds = new PageSeconds();
        browser.onRequestFinished(request -> {
            if (request.resourceType().equals("document")) {
                seconds.took(request.method() + " " + request.url(), came(request));
            }
        });
        return seconds;
    }

    private static double came(Request request) {
        return request.timing().responseEnd / 1000;
    }

    void took(String asked, double seconds) {
        pages.computeIfAbsent(page(asked), page -> new DoubleSummaryStatistics())
                .accept(seconds);
    }

    /** Without host, query, ids and names of activities. */
    private static String page(String asked) {
        return asked.replaceAll("https?://[^/]+", "")
                .replaceAll("\\?.*", "")
                .replaceAll("[0-9a-f]{8}-[0-9a-f-]{27}", "*")
                .replaceAll("/schedule/[^/]+", "/schedule/*");
    }

    void write(Path file) {
        String lines = pages.entrySet().stream()
                .map(page -> String.format(
                        Locale.ROOT,
                        "%-58s %4d times, mean %.2f s, longest %.2f s%n",
                        page.getKey(),
                        page.getValue().getCount(),
                        page.getValue().getAverage(),
                        page.getValue().getMax()))
                .collect(Collectors.joining());
        try {
            Files.writeString(file, lines);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
