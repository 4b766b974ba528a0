package org.plumbrow.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Each text that a page asks for is there, and each text that is there is asked for. */
class TextsTest {

    private static final Path MESSAGES = Path.of("src/main/resources/messages");
    private static final Path TEMPLATES = Path.of("src/main/resources/templates");
    private static final Path JAVA = Path.of("src/main/java");
    private static final Pattern ASKED = Pattern.compile("#\\{\\s*([a-z][A-Za-z0-9_.-]*[A-Za-z0-9])\\s*[({}]");
    /** A key that is put together from a state's name: {@code #{__${'project.stage.' + stage}__}}; its beginning counts. */
    private static final Pattern ASKED_BY_BEGINNING =
            Pattern.compile("['|\"]([a-z][a-z0-9]*(?:\\.[A-Za-z0-9-]+)*\\.)(?:['|\"]|\\$\\{)");

    @Test
    void eachTextAPageAsksForIsThere() {
        Set<String> missing = new TreeSet<>();
        Set<String> known = keys();
        for (String page : files(TEMPLATES, ".html")) {
            Matcher asked = ASKED.matcher(page);
            while (asked.find()) {
                if (!known.contains(asked.group(1))) {
                    missing.add(asked.group(1));
                }
            }
        }
        assertThat(missing).isEmpty();
    }

    /** {@code th:replace} comes first: the condition on the same tag is never asked, and a key in it may not exist. */
    @Test
    void noTagIsReplacedAndConditionalAtOnce() {
        Pattern both = Pattern.compile("<[a-z:]+ [^>]*th:(?:if|unless)=\"[^\"]*\"[^>]*th:replace=\"[^\"]*\""
                + "|<[a-z:]+ [^>]*th:replace=\"[^\"]*\"[^>]*th:(?:if|unless)=\"");
        assertThat(files(TEMPLATES, ".html"))
                .allSatisfy(page -> assertThat(both.matcher(page).results().map(found -> found.group()))
                        .isEmpty());
    }

    @Test
    void eachTextIsAskedForSomewhere() {
        List<String> sources = new ArrayList<>(files(TEMPLATES, ".html"));
        sources.addAll(files(JAVA, ".java"));
        Set<String> used = new TreeSet<>();
        Set<String> beginnings = new TreeSet<>();
        Pattern quoted = Pattern.compile("[\"']\\{?([a-z][A-Za-z0-9_-]*(?:\\.[A-Za-z0-9_-]+)+)}?[\"']");
        for (String source : sources) {
            collect(ASKED.matcher(source), used);
            collect(quoted.matcher(source), used);
            collect(ASKED_BY_BEGINNING.matcher(source), beginnings);
        }
        assertThat(keys())
                .filteredOn(key -> !used.contains(key))
                .filteredOn(key -> beginnings.stream().noneMatch(key::startsWith))
                .filteredOn(key -> !key.startsWith("typeMismatch.") && !key.startsWith("constraint."))
                .isEmpty();
    }

    /** Of two texts under one key the later one stands everywhere, whatever the page wanted to say. */
    @Test
    void noTextIsWrittenTwice() {
        Pattern key = Pattern.compile("(?m)^([A-Za-z][A-Za-z0-9_.-]*)=");
        Set<String> seen = new TreeSet<>();
        Set<String> twice = new TreeSet<>();
        for (String bundle : files(MESSAGES, ".properties")) {
            key.matcher(bundle).results().map(found -> found.group(1)).forEach(one -> {
                if (!seen.add(one)) {
                    twice.add(one);
                }
            });
        }
        assertThat(twice).isEmpty();
    }

    private static void collect(Matcher found, Set<String> into) {
        while (found.find()) {
            into.add(found.group(1));
        }
    }

    private static Set<String> keys() {
        Set<String> keys = new TreeSet<>();
        try (Stream<Path> bundles = Files.list(MESSAGES)) {
            for (Path bundle :
                    bundles.filter(path -> !path.toString().contains("_")).toList()) {
                Properties texts = new Properties();
                try (Reader reader = Files.newBufferedReader(bundle)) {
                    texts.load(reader);
                }
                keys.addAll(texts.stringPropertyNames());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return keys;
    }

    private static List<String> files(Path folder, String ending) {
        try (Stream<Path> all = Files.walk(folder)) {
            List<String> contents = new ArrayList<>();
            for (Path file :
                    all.filter(path -> path.toString().endsWith(ending)).toList()) {
                contents.add(Files.readString(file));
            }
            return contents;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
