package org.plumbrow.browser;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.springframework.http.server.PathContainer;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import org.springframework.web.util.pattern.PathPattern;

/** The addresses that the application itself says it answers to a GET. */
final class Routes {

    private static final Pattern VARIABLE = Pattern.compile("\\{\\*?([^}:]+)[^}]*}");

    private final List<PathPattern> patterns;

    Routes(RequestMappingHandlerMapping mapping) {
        patterns = mapping.getHandlerMethods().entrySet().stream()
                .filter(route -> route.getValue().getBeanType().getName().startsWith("org.plumbrow"))
                .filter(route ->
                        route.getKey().getMethodsCondition().getMethods().contains(RequestMethod.GET))
                .flatMap(route -> route.getKey().getPathPatternsCondition().getPatterns().stream())
                .sorted(PathPattern.SPECIFICITY_COMPARATOR)
                .toList();
    }

    Set<String> all() {
        return patterns.stream().map(PathPattern::getPatternString).collect(Collectors.toCollection(TreeSet::new));
    }

    /** @return the route that this path leads to */
    Optional<String> of(String path) {
        PathContainer asked = PathContainer.parsePath(path);
        return patterns.stream()
                .filter(pattern -> pattern.matches(asked))
                .map(PathPattern::getPatternString)
                .findFirst();
    }

    /** @return the route with these values for its variables; a private link that no room gives has ended */
    static String filled(String route, Map<String, String> values) {
        return VARIABLE.matcher(route)
                .replaceAll(found -> Matcher.quoteReplacement(values.getOrDefault(found.group(1), "there-is-none")));
    }
}
