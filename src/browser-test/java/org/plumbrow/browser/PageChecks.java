package org.plumbrow.browser;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Page.ScreenshotOptions;
import com.microsoft.playwright.options.ColorScheme;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What holds for every page, at phone and desktop width: accessible, no sideways scroll, one h1, no inline style, no raw
 * name or date of the program's own, nothing in the console.
 */
final class PageChecks {

    static final int PHONE = 390;
    static final int DESK = 1440;
    static final String AXE = axe();

    private static final String RUN_AXE = """
            async only => {
              const found = await axe.run(document, {
                resultTypes: ['violations'],
                runOnly: only || ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']});
              return found.violations.map(v => 'axe ' + v.id + ': ' + v.help + ' at '
                + v.nodes.slice(0, 3).map(n => n.target.join(' ') + ' ' + n.html.slice(0, 120)).join(' | '));
            }
            """;
    /** Rows that are built like two earlier ones are left out for axe: 136 of one kind tell no more than three. */
    private static final String THIN_OUT = """
            () => document.querySelectorAll('tbody, ul, ol').forEach(list => {
              const seen = new Map();
              [...list.children].forEach(row => {
                const kind = [row, ...row.querySelectorAll('*')].map(e => e.tagName + e.getAttribute('class')).join();
                seen.set(kind, (seen.get(kind) || 0) + 1);
                if (seen.get(kind) > 3) row.remove();
              });
            })
            """;

    private static final int[] WIDTHS = {PHONE, DESK};
    private static final String LOOK = """
            width => {
              const found = [];
              const needed = document.documentElement.scrollWidth;
              if (needed > width) {
                const wide = [...document.querySelectorAll('body *')]
                  .find(e => !e.closest('.roll') && e.getBoundingClientRect().right > width + 1);
                found.push('scrolls sideways: ' + needed + ' px of ' + width + ', '
                  + (wide ? wide.tagName + '.' + wide.className + ' ' + wide.textContent.trim().slice(0, 60) : '?'));
              }
              const headings = document.querySelectorAll('h1').length;
              if (headings !== 1) found.push(headings + ' h1');
              if (!document.title.trim() || document.title.startsWith('null')) found.push('title: ' + document.title);
              const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
              for (let node = texts.nextNode(); node; node = texts.nextNode()) {
                const text = node.textContent.trim();
                if (node.parentElement.closest('script, style, textarea, .asis')) continue;
                if (/\\?\\?[a-z]+\\.|\\$\\{|#\\{|\\bnull\\b|\\bundefined\\b|\\bNaN\\b/.test(text)) {
                  found.push('unfinished text: ' + text.slice(0, 120));
                }
                if (/\\b[A-Z]{2,}_[A-Z_]+\\b/.test(text)) found.push('raw name: ' + text.slice(0, 120));
                if (/\\b20\\d\\d-\\d\\d-\\d\\d\\b/.test(text)) found.push('raw date: ' + text.slice(0, 120));
              }
              return [...new Set(found)];
            }
            """;

    private PageChecks() {}

    /** @return a sentence per finding; empty when the page is as it should be */
    static List<String> findings(Page page, String picture) {
        List<String> found = new ArrayList<>();
        for (int width : WIDTHS) {
            look(page, width).forEach(one -> found.add("at " + width + " px: " + one));
            keepPicture(page, picture, width);
        }
        page.evaluate(THIN_OUT);
        for (int width : WIDTHS) {
            page.setViewportSize(width, width == PHONE ? 844 : 900);
            strings(page.evaluate(RUN_AXE)).forEach(one -> found.add("at " + width + " px: " + one));
        }
        return found;
    }

    private static List<String> look(Page page, int width) {
        page.setViewportSize(width, width == PHONE ? 844 : 900);
        return strings(page.evaluate(LOOK, width));
    }

    /** Contrast again, for whoever's device is dark. */
    static List<String> findingsInTheDark(Page page) {
        List<String> found = new ArrayList<>();
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.DARK));
        strings(page.evaluate(RUN_AXE, List.of("color-contrast"))).forEach(one -> found.add("in the dark: " + one));
        page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(ColorScheme.LIGHT));
        return found;
    }

    @SuppressWarnings("unchecked")
    static List<String> strings(Object evaluated) {
        return evaluated instanceof List<?> ? (List<String>) evaluated : List.of();
    }

    private static void keepPicture(Page page, String name, int width) {
        String folder = System.getProperty("plumbrow.screenshots");
        if (folder != null) {
            String file = name.replaceAll("[^A-Za-z0-9]+", "-") + "-" + width + ".png";
            page.screenshot(
                    new ScreenshotOptions().setPath(Path.of(folder, file)).setFullPage(true));
        }
    }

    private static String axe() {
        try (InputStream script = PageChecks.class.getResourceAsStream("/axe.min.js")) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
