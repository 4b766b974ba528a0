package org.plumbrow.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The machine's own Chromium, driven by Playwright; nothing is downloaded. {@code PLUMBROW_CHROMIUM} names another
 * place than {@code /usr/bin/chromium}. The profile {@code browser} fails where there is none.
 */
final class Chromium {

    private static final double SLOW_MACHINE_MS = 30_000;

    private static final List<String> ARGUMENTS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--disable-quic",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private static final Chromium ONE = new Chromium();

    private final Playwright playwright;
    private final Browser browser;

    private Chromium() {
        PlaywrightAssertions.setDefaultAssertionTimeout(SLOW_MACHINE_MS);
        Map<String, String> environment = new HashMap<>(System.getenv());
        environment.put("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
        playwright = Playwright.create(new Playwright.CreateOptions().setEnv(environment));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(installed())
                        .setArgs(ARGUMENTS));
        Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
    }

    static Browser browser() {
        return ONE.browser;
    }

    /** A browser of its own that keeps what it has in this folder, as a phone does when it is switched off and on. */
    static BrowserContext startedOn(Path profile, String base) {
        return ONE.playwright
                .chromium()
                .launchPersistentContext(
                        profile,
                        new BrowserType.LaunchPersistentContextOptions()
                                .setExecutablePath(installed())
                                .setArgs(ARGUMENTS)
                                .setBaseURL(base)
                                .setViewportSize(PageChecks.PHONE, 844));
    }

    private static Path installed() {
        return Stream.of(System.getenv("PLUMBROW_CHROMIUM"), "/usr/bin/chromium", "/usr/bin/chromium-browser")
                .filter(place -> place != null && !place.isBlank())
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "No Chromium found. Install it (Debian: apt-get install chromium) or set PLUMBROW_CHROMIUM."));
    }
}
