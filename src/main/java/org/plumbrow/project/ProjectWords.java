package org.plumbrow.project;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** The words by which a project is found, and the words in what somebody typed: the same cut for both. */
public final class ProjectWords {

    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]+");
    private static final int LONGEST_WORD = 40;
    private static final int SHORTEST_METER_END = 4;

    private ProjectWords() {}

    /** The different words of a text, small, in order. */
    public static List<String> in(String text) {
        return BETWEEN_WORDS
                .splitAsStream(text.toLowerCase(Locale.ROOT))
                .filter(word -> !word.isEmpty())
                .map(word -> word.length() <= LONGEST_WORD ? word : word.substring(0, LONGEST_WORD))
                .distinct()
                .toList();
    }

    /** Each word of number, name, site and meter; of a meter number also its ends, as people read the last digits out. */
    static Set<String> of(ProjectFacts facts) {
        Set<String> words = new TreeSet<>();
        words.addAll(in(facts.number()));
        words.addAll(in(facts.name()));
        words.addAll(in(facts.site().address()));
        for (String meter : facts.site().meterNumbers()) {
            words.addAll(in(meter));
            String whole = String.join("", in(meter));
            for (int from = 0; from <= whole.length() - SHORTEST_METER_END; from++) {
                words.addAll(in(whole.substring(from)));
            }
        }
        return words;
    }
}
