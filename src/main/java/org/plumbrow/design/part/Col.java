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
 * @param spots whether it is a list of points of the site plan
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
        boolean spots) {

    private static final int LONGEST = 120;

    public Col {
        options = List.copyOf(options);
    }

    public static Col text(String name, String label, String hint) {
        return new Col(name, label, hint, null, false, List.of(), "", false, false);
    }

    public static Col figure(String name, String label, double least, double most, String unit) {
        return new Col(name, label, "", new Range(least, most, unit), false, List.of(), "", false, false);
    }

    public static Col count(String name, String label, int least, int most, String unit) {
        return new Col(name, label, "", new Range(least, most, unit), true, List.of(), "", false, false);
    }

    public static Col choice(String name, String label, List<Option> options) {
        return new Col(name, label, "", null, false, options, "", false, false);
    }

    /** One of a list that each project has of its own. */
    public static Col oneOf(String name, String label, String from) {
        return new Col(name, label, "", null, false, List.of(), from, false, false);
    }

    public static Col yesNo(String name, String label) {
        return choice(name, label, List.of(new Option("no", "no"), new Option("yes", "yes")));
    }

    /** Points in feet east and north of the meter. */
    public static Col spots(String name, String label) {
        return new Col(
                name,
                label,
                "feet east and north of the meter, for example 0 -20; 40 -20; west and south below 0",
                null,
                false,
                List.of(),
                "",
                false,
                true);
    }

    /** The same, without which a row says nothing. */
    public Col must() {
        return new Col(name, label, hint, range, whole, options, from, true, spots);
    }

    public Col saying(String said) {
        return new Col(name, label, said, range, whole, options, from, needed, spots);
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
        if (spots) {
            return Spots.read(typed).isEmpty() ? Optional.of(Spots.HOW) : Optional.empty();
        }
        if (range == null) {
            return typed.length() > LONGEST
                    ? Optional.of("Write %s in at most %d characters.".formatted(the(), LONGEST))
                    : Optional.empty();
        }
        return Cells.isFigure(typed, range, whole)
                ? Optional.empty()
                : Optional.of("Write %s as a %s from %s."
                        .formatted(the(), whole ? "whole number" : "number", Entered.hint(range)));
    }

    private String the() {
        return "the " + label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }
}
