package org.plumbrow.browser;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What holds for every page: accessible, no sideways scroll, one h1, no inline style, nothing in the console. */
final class PageChecks {

    private static final String AXE = axe();
    private static final String RUN_AXE = """
            async () => {
              const found = await axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']});
              return found.violations.map(v => v.id + ': ' + v.help + ' at ' + v.nodes.slice(0, 3).map(n => n.target.join(' ')).join(' | '));
            }
            """;

    private PageChecks() {}

    /** @return a sentence per finding; empty when the page is as it should be */
    static List<String> findings(Page page, int width) {
        List<String> found = new ArrayList<>();
        page.evaluate(AXE + "; 0");
        strings(page.evaluate(RUN_AXE)).forEach(violation -> found.add("axe " + violation));
        int needed = ((Number) page.evaluate("() => document.documentElement.scrollWidth")).intValue();
        if (needed > width) {
            found.add("scrolls sideways: " + needed + " px of " + width + ", widest "
                    + page.evaluate(
                            "w => { const e = [...document.querySelectorAll('main *')].filter(x => !x.closest('.roll') && x.getBoundingClientRect().right > w + 1)[0]; return e ? e.tagName + '.' + e.className : 'outside main'; }",
                            width));
        }
        int headings = ((Number) page.evaluate("() => document.querySelectorAll('h1').length")).intValue();
        if (headings != 1) {
            found.add(headings + " h1");
        }
        int styled = ((Number) page.evaluate("() => document.querySelectorAll('[style]:not([class*=htmx])').length"))
                .intValue();
        if (styled > 0) {
            found.add(styled + " elements with inline style");
        }
        strings(
                        page.evaluate(
                                "() => [...document.querySelectorAll('body *')].filter(e => e.children.length === 0 && /\\?\\?[a-z]+\\.|\\$\\{|#\\{/.test(e.textContent)).map(e => e.textContent.trim())"))
                .forEach(text -> found.add("unfinished text: " + text));
        return found;
    }

    @SuppressWarnings("unchecked")
    static List<String> strings(Object evaluated) {
        return evaluated instanceof List<?> ? (List<String>) evaluated : List.of();
    }

    @SuppressWarnings("unchecked")
    static Map<String, String> texts(Object evaluated) {
        return (Map<String, String>) evaluated;
    }

    private static String axe() {
        try (InputStream script = PageChecks.class.getResourceAsStream("/axe.min.js")) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
