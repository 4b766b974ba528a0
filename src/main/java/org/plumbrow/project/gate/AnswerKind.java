package org.plumbrow.project.gate;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/** What an item asks for; several are possible. */
public enum AnswerKind {
    CONFIRMATION("confirmation"),
    READING("reading"),
    PHOTO("photo"),
    DOCUMENT("document"),
    DATE("date"),
    SIGNATURE("signature"),
    /** Judged by a rule from the project's own data, never ticked. */
    COMPUTED("computed");

    private final String words;

    AnswerKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** "photo+reading", in the order of this list. */
    static String write(Collection<AnswerKind> kinds) {
        return kinds.stream().sorted().map(AnswerKind::words).collect(Collectors.joining("+"));
    }

    static List<AnswerKind> read(String written) {
        return Arrays.stream(written.split("\\+"))
                .map(AnswerKind::called)
                .sorted()
                .toList();
    }

    private static AnswerKind called(String words) {
        return Arrays.stream(values())
                .filter(kind -> kind.words.equals(words))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no kind of answer: " + words));
    }
}
