package org.plumbrow.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.options.RequestOptions;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.plumbrow.RouteSamples;
import org.plumbrow.TestWorld;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.browser.Walk.Seen;
import org.plumbrow.demo.LoadedDemo;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * Every page, in a real browser at phone and desktop width: no finding of axe, no message in the console, no sideways
 * scroll. The list of pages is the application's own, so a page that a room adds is looked at without touching this
 * test: by the links that lead there, else with the room's {@link RouteSamples}.
 */
@LoadedDemo
class EveryPageTest {

    private static final List<String> PEOPLE = List.of("ines", "tamsin", "dov", "jory", "maren");

    @LocalServerPort
    int port;

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    RequestMappingHandlerMapping mapping;

    @Autowired
    TestWorld world;

    @Autowired
    List<RouteSamples> samples;

    @Test
    void everyPageIsAsItShouldBeForWhoeverSeesIt() {
        Visits visits = new Visits(port);
        Routes routes = new Routes(mapping);
        Seen seen = new Seen();
        for (String person : PEOPLE) {
            try (BrowserContext browser = visits.of(person)) {
                new Walk(browser, routes, person, seen, person.equals("ines") ? 3 : 1).from("/", "/you");
            }
        }
        Set<String> linked = new TreeSet<>(seen.routes());
        walkAnEmptyBranch(visits, routes, seen);
        walkWhatNoLinkLeadsTo(visits, routes, seen);
        Set<String> never = new TreeSet<>(routes.all());
        never.removeAll(seen.routes());
        LoggerFactory.getLogger(getClass())
                .info(
                        "{} of {} routes linked, {} pages looked at",
                        linked.size(),
                        routes.all().size(),
                        seen.looks());
        assertThat(seen.findings()).isEmpty();
        assertThat(never).as("routes that were never opened").isEmpty();
    }

    /** A branch without a project, a crew or a utility: each page has something to say there too. */
    private void walkAnEmptyBranch(Visits visits, Routes routes, Seen seen) {
        String code = world.branch().code();
        try (BrowserContext browser = visits.of("maren")) {
            browser.request().get("/projects?branch=" + code);
            new Walk(browser, routes, "maren in an empty branch", seen, 1).from("/projects", "/you", "/look-ahead");
            browser.request().get("/projects?branch=QV");
        }
    }

    private void walkWhatNoLinkLeadsTo(Visits visits, Routes routes, Seen seen) {
        TestBranch branch = world.branch();
        Map<String, String> values = new HashMap<>();
        samples.forEach(room -> values.putAll(room.in(branch)));
        samples.forEach(room -> values.putAll(room.of(branch.manager())));
        try (BrowserContext browser = visits.of("maren");
                BrowserContext nobody = visits.ofNobody()) {
            new Walk(nobody, routes, "nobody", seen, 1).from("/sign-in");
            for (String route : routes.all()) {
                if (!seen.routes().contains(route)) {
                    String address = Routes.filled(route, values) + asked(route);
                    boolean isPublic = nobody.request()
                                    .get(address, RequestOptions.create().setMaxRedirects(0))
                                    .status()
                            != 302;
                    new Walk(isPublic ? nobody : browser, routes, isPublic ? "nobody" : "maren", seen, 1)
                            .alone(address);
                }
            }
        }
    }

    /** The fields without which the route cannot be asked. */
    private String asked(String route) {
        String fields = samples.stream()
                .flatMap(room -> room.fields().getOrDefault("GET " + route, Map.of()).entrySet().stream())
                .map(field -> field.getKey() + "=" + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return fields.isEmpty() ? "" : "?" + fields;
    }
}
