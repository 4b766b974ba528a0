package org.plumbrow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.plumbrow.TestWorld.TestBranch;
import org.plumbrow.database.BranchWall;
import org.plumbrow.web.Role;
import org.plumbrow.web.Visitor;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.http.HttpMethod;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;

/**
 * Every route × every role × (own branch, another branch), against the tables in {@code src/test/resources/access}.
 * A route in no table fails, and so does a line without a route.
 *
 * <p>{@code yes}: let in; 404 when the thing or the branch is another's. {@code no}: 403; another's is 404, or 403 as for
 * everything behind that address. {@code own}: a page of the person, let in whatever the branch. {@code public}: without signing in; all others lead to the sign-in page.
 * Whatever a request changes is rolled back, so that the order does not count.
 */
@PlumbrowTest
class RouteAccessTest {

    private static final Pattern VARIABLE = Pattern.compile("\\{\\*?([^}:]+)[^}]*}");
    private static final Map<String, Line> TABLE = readTables();

    @Autowired
    @Qualifier("requestMappingHandlerMapping")
    RequestMappingHandlerMapping mapping;

    @Autowired
    MockMvcTester mvc;

    @Autowired
    TestWorld world;

    @Autowired
    TransactionTemplate transaction;

    @Autowired
    List<RouteSamples> samples;

    private TestBranch branch;
    private TestBranch another;
    private Map<String, String> here;
    private Map<String, String> there;

    /** One line of a table. */
    private record Line(String file, Map<Role, String> cells) {
        boolean isPublic() {
            return cells.containsValue("public");
        }
    }

    @Test
    void everyRouteHasItsLineAndEveryLineItsRoute() {
        assertThat(new TreeSet<>(TABLE.keySet()))
                .as("lines of src/test/resources/access/*.csv, and the routes of the controllers")
                .isEqualTo(new TreeSet<>(routes()));
    }

    @TestFactory
    Stream<DynamicTest> everybodyGetsInWhereTheyMayAndNowhereElse() {
        branch = world.branch();
        another = world.branch();
        here = of(branch);
        there = of(another);
        return routes().stream()
                .filter(TABLE::containsKey)
                .map(route -> DynamicTest.dynamicTest(
                        route,
                        () -> assertThat(breaches(route))
                                .as(route + " (" + TABLE.get(route).file() + ")")
                                .isEmpty()));
    }

    private List<String> breaches(String route) {
        Line line = TABLE.get(route);
        List<String> breaches = new ArrayList<>();
        int anonymous = status(route, here, null, null);
        boolean turnedAway = anonymous == 401;
        if (line.isPublic() == turnedAway || anonymous >= 500) {
            breaches.add("nobody signed in: " + anonymous);
        }
        if (line.isPublic()) {
            return breaches;
        }
        for (Role role : Role.values()) {
            Visitor visitor = branch.in(role);
            String cell = line.cells().get(role);
            int own = status(route, here, visitor, null);
            boolean asPromised = cell.equals("no") ? own == 403 : own < 500 && own != 401 && own != 403 && own != 404;
            if (!asPromised) {
                breaches.add(role + " in the own branch, " + cell + ": " + own);
            }
            if (!cell.equals("own") && role != Role.OWNER) {
                boolean named = namesAThingOfTheBranch(route);
                int foreign =
                        named ? status(route, there, visitor, null) : status(route, here, visitor, another.code());
                boolean shut = foreign == 404 || named && cell.equals("no") && foreign == 403;
                if (!shut) {
                    breaches.add(role + " in another branch: " + foreign);
                }
            }
        }
        return breaches;
    }

    /** A variable with the same value in each branch (the code of a shipped row) names nothing of the branch. */
    private boolean namesAThingOfTheBranch(String route) {
        return VARIABLE.matcher(route)
                .results()
                .map(variable -> variable.group(1))
                .anyMatch(name -> !here.containsKey(name) || !here.get(name).equals(there.get(name)));
    }

    /** @return the status; 401 also for a redirect to the sign-in page */
    private int status(String route, Map<String, String> values, Visitor visitor, String branchCode) {
        Integer status = BranchWall.everywhere(() -> transaction.execute(undone -> {
            undone.setRollbackOnly();
            return ask(route, values, visitor, branchCode);
        }));
        assertThat(status).isNotNull();
        return status;
    }

    private int ask(String route, Map<String, String> values, Visitor visitor, String branchCode) {
        String method = route.substring(0, route.indexOf(' '));
        Map<String, String> all = new HashMap<>(values);
        if (visitor != null) {
            samples.forEach(room -> all.putAll(room.of(visitor)));
        }
        String path = filled(route.substring(route.indexOf(' ') + 1), all, visitor == null);
        var request = mvc.method(HttpMethod.valueOf(method)).uri(path).with(csrf());
        if (branchCode != null) {
            request.param("branch", branchCode);
        }
        if (visitor != null) {
            request.with(world.signedIn(visitor));
        }
        samples.forEach(room -> room.fields().getOrDefault(route, Map.of()).forEach(request::param));
        MvcTestResult answer = request.exchange();
        if (answer.getUnresolvedException() != null) {
            throw new AssertionError(route, answer.getUnresolvedException());
        }
        String location = answer.getResponse().getHeader("Location");
        // the sign-in pages lead to their own beginning
        boolean toSignIn = location != null
                && location.matches("(https?://[^/]+)?/sign-in(\\?next=.*)?")
                && !path.startsWith("/sign-in");
        return toSignIn ? 401 : answer.getResponse().getStatus();
    }

    private static String filled(String pattern, Map<String, String> values, boolean anonymous) {
        Matcher variable = VARIABLE.matcher(pattern);
        return variable.replaceAll(found -> {
            // what belongs to a person is nobody's here
            String value = values.getOrDefault(
                    found.group(1), anonymous ? UUID.randomUUID().toString() : null);
            assertThat(value)
                    .as("a RouteSamples bean must give a value for {" + found.group(1) + "} of " + pattern)
                    .isNotNull();
            return Matcher.quoteReplacement(value);
        });
    }

    private Map<String, String> of(TestBranch of) {
        Map<String, String> values = new HashMap<>();
        samples.forEach(room -> values.putAll(room.in(of)));
        return values;
    }

    private List<String> routes() {
        return mapping.getHandlerMethods().entrySet().stream()
                .filter(route -> route.getValue().getBeanType().getName().startsWith("org.plumbrow"))
                .flatMap(route -> routes(route.getKey()))
                .sorted()
                .toList();
    }

    private static Stream<String> routes(RequestMappingInfo info) {
        var methods = info.getMethodsCondition().getMethods();
        assertThat(methods).as("name the method of " + info).isNotEmpty();
        var patterns = info.getPathPatternsCondition();
        assertThat(patterns).isNotNull();
        return patterns.getPatternValues().stream()
                .map(pattern -> pattern.isEmpty() ? "/" : pattern)
                .flatMap(pattern -> methods.stream().map(method -> method + " " + pattern));
    }

    private static Map<String, Line> readTables() {
        Map<String, Line> lines = new TreeMap<>();
        try {
            for (Resource table : new PathMatchingResourcePatternResolver().getResources("classpath:access/*.csv")) {
                var format = CSVFormat.DEFAULT
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .setCommentMarker('#')
                        .setIgnoreEmptyLines(true)
                        .get();
                try (CSVParser rows = CSVParser.parse(table.getURL(), StandardCharsets.UTF_8, format)) {
                    for (CSVRecord row : rows) {
                        String route = row.get("method") + " " + row.get("route");
                        Line before = lines.put(route, new Line(table.getFilename(), cells(row)));
                        assertThat(before).as(route + " stands twice").isNull();
                    }
                }
            }
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return lines;
    }

    private static Map<Role, String> cells(CSVRecord row) {
        Map<Role, String> cells = new LinkedHashMap<>();
        for (Role role : Role.values()) {
            String cell = row.get(role.name()).strip();
            assertThat(cell).as(row.toString()).isIn("yes", "no", "own", "public");
            cells.put(role, cell);
        }
        return cells;
    }
}
