package org.plumbrow.design.part;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Option;

/**
 * One field of a part of the design, said once: from here come hint, check, sentence and the page that lays theirs beside
 * yours.
 *
 * @param name as the form calls it
 * @param label as people call it
 * @param hint beside the limits; empty for none
 * @param range of a figure; null for text and choices
 * @param whole whether a figure has no decimals
 * @param options of a choice; empty for what is typed, unless {@link #from} names a list that is made for each project
 * @param from name of such a list: "modules", "inverters", "arrays", "marks"; empty for none
 * @param needed whether a row without it says nothing
 * @param written how it is written where it is neither a figure nor a choice
 */
public record Col(
        String name,
        String label,
        String hint,
        @Nullable Range range,
        boolean whole,
        List<Option> options,
        String from,
        boolean needed,
        Form written) {

    private static final int LONGEST = 120;

    /** How a field is written that is neither a figure nor a choice. */
    public enum Form {
        WORDS,
        DATE,
        TIME,
        SPOTS
    }

    public Col {
        options = List.copyOf(options);
    }

    public static Col text(String name, String label, String hint) {
        return typed(name, label, hint, Form.WORDS);
    }

    public static Col date(String name, String label) {
        return typed(name, label, "", Form.DATE);
    }

    /** A time of the day. */
    public static Col time(String name, String label) {
        return typed(name, label, "", Form.TIME);
    }

    private static Col typed(String name, String label, String hint, Form written) {
        return new Col(name, label, hint, null, false, List.of(), "", false, written);
    }

    public static Col figure(String name, String label, double least, double most, String unit) {
        return new Col(name, label, "", new Range(least, most, unit), false, List.of(), "", false, Form.WORDS);
    }

    public static Col count(String name, String label, int least, int most, String unit) {
        return new Col(name, label, "", new Range(least, most, unit), true, List.of(), "", false, Form.WORDS);
    }

    public static Col choice(String name, String label, List<Option> options) {
        return new Col(name, label, "", null, false, options, "", false, Form.WORDS);
    }

    /** One of a list that each project has of its own. */
    public static Col oneOf(String name, String label, String from) {
        return new Col(name, label, "", null, false, List.of(), from, false, Form.WORDS);
    }

    public static Col yesNo(String name, String label) {
        return choice(name, label, List.of(new Option("no", "no"), new Option("yes", "yes")));
    }

    /** Points in feet east and north of the meter. */
    public static Col spots(String name, String label) {
        return typed(
                name,
                label,
                "feet east and north of the meter, for example 0 -20; 40 -20; west and south below 0",
                Form.SPOTS);
    }

    /** The same, without which a row says nothing. */
    public Col must() {
        return new Col(name, label, hint, range, whole, options, from, true, written);
    }

    public Col saying(String said) {
        return new Col(name, label, said, range, whole, options, from, needed, written);
    }

    public boolean isChoice() {
        return !options.isEmpty() || !from.isEmpty();
    }

    public String unit() {
        return range == null ? "" : range.unit();
    }

    /** What the keyboard of a phone should offer; neither where a value can be below 0. */
    public String mode() {
        return range == null || range.least() < 0 ? "" : whole ? "numeric" : "decimal";
    }

    /** Of the field of the form: what a browser helps to write. */
    public String input() {
        return switch (written) {
            case DATE -> "date";
            case TIME -> "time";
            case WORDS, SPOTS -> "text";
        };
    }

    /** "0 to 90 °, optional": the limits and whether it may be left empty. */
    public String hintWords() {
        String limits = range == null ? "" : Entered.hint(range);
        String all = (hint.isEmpty() || limits.isEmpty() ? hint + limits : limits + "; " + hint).strip();
        return isChoice() || needed ? all : all.isEmpty() ? "optional" : all + "; optional";
    }

    /** What is wrong with what was typed, in words that say what to do; empty when nothing is. */
    Optional<String> wrong(String typed, List<Option> offered) {
        if (typed.isEmpty()) {
            return needed ? Optional.of((isChoice() ? "Choose " : "Write ") + the() + ".") : Optional.empty();
        }
        if (isChoice()) {
            boolean known = offered.stream().anyMatch(option -> option.value().equals(typed));
            return known ? Optional.empty() : Optional.of("Choose " + the() + " from the list.");
        }
        if (range == null) {
            return unreadable(typed);
        }
        return Cells.isFigure(typed, range, whole)
                ? Optional.empty()
                : Optional.of("Write %s as a %s from %s."
                        .formatted(the(), whole ? "whole number" : "number", Entered.hint(range)));
    }

    private Optional<String> unreadable(String typed) {
        return switch (written) {
            case WORDS ->
                unless(typed.length() <= LONGEST, "Write %s in at most %d characters.".formatted(the(), LONGEST));
            case DATE ->
                unless(Cells.day(typed).isPresent(), "Write %s as a date, for example 2027-03-26.".formatted(the()));
            case TIME ->
                unless(Cells.clock(typed).isPresent(), "Write %s as a time, for example 07:30.".formatted(the()));
            case SPOTS -> unless(!Spots.read(typed).isEmpty(), Spots.HOW);
        };
    }

    private static Optional<String> unless(boolean fine, String sentence) {
        return fine ? Optional.empty() : Optional.of(sentence);
    }

    private String the() {
        return "the " + label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }
}
