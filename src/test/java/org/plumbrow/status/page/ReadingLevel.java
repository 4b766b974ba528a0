package org.plumbrow.status.page;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/**
 * Flesch-Kincaid grade of a page: 0.39 words a sentence + 11.8 syllables a word − 15.59 (Kincaid et al. 1975, Research
 * Branch Report 8-75). Each block of the page ends a sentence, as a reader stops there; syllables are counted by groups
 * of vowels, without a silent e.
 */
final class ReadingLevel {

    private ReadingLevel() {}

    static double ofPage(Document page) {
        StringBuilder text = new StringBuilder();
        for (Element block : page.select("main h1, main h2, main p, main li, main dt, main dd, footer p")) {
            if (block.select("p, li").size() <= 1) {
                text.append(block.text()).append(". ");
            }
        }
        return ofText(text.toString());
    }

    static double ofText(String text) {
        long sentences = sentences(text).size();
        List<String> words = words(text);
        long syllables = words.stream().mapToLong(ReadingLevel::syllables).sum();
        return 0.39 * words.size() / sentences + 11.8 * syllables / words.size() - 15.59;
    }

    private static List<String> sentences(String text) {
        return Arrays.stream(text.split("[.!?](?=\\s|$)"))
                .filter(sentence -> !words(sentence).isEmpty())
                .toList();
    }

    private static List<String> words(String text) {
        return Arrays.stream(text.split("[^A-Za-z']+"))
                .filter(word -> word.chars().anyMatch(Character::isLetter))
                .toList();
    }

    static int syllables(String word) {
        String plain = word.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
        String sounded =
                plain.replaceAll("(?<=[a-z]{2})(?<![aeiouyl])e$|(?<=[^aeiouytd])ed$|(?<=[^aeiouyszxch])es$", "");
        int groups = sounded.split("[aeiouy]+", -1).length - 1;
        return Math.max(1, groups);
    }
}
