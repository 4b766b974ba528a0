package org.plumbrow.cutover.daylog;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.DoublePredicate;
import org.plumbrow.calc.Range;
import org.plumbrow.web.NumbersAsWritten;
import org.plumbrow.web.Option;

/**
 * A reading that a step asks for: a number with unit and limits, one of a few, or a line of text.
 *
 * @param quantity how an entry names it
 * @param hint unit and usual values
 * @param possible what can be a reading at all; empty for choices and text
 * @param shuts values outside their limits that no explanation makes good: the step waits for another reading
 * @param outside says what to do about a number that is possible but outside its limits; empty text when it is inside
 */
record Asked(
        String quantity,
        String words,
        String hint,
        String unit,
        boolean required,
        boolean whole,
        List<Option> choices,
        Optional<Range> possible,
        DoubleFunction<String> outside,
        DoublePredicate shuts) {

    private static final DoublePredicate NOTHING = value -> false;

    static final int MOST_TEXT = 200;

    static Asked number(
            String quantity,
            String words,
            String hint,
            Range possible,
            boolean required,
            DoubleFunction<String> outside) {
        return new Asked(
                quantity,
                words,
                hint,
                possible.unit(),
                required,
                false,
                List.of(),
                Optional.of(possible),
                outside,
                NOTHING);
    }

    /** The same, with values on which nobody goes on, whatever the reason. */
    Asked shutAt(DoublePredicate never) {
        return new Asked(quantity, words, hint, unit, required, whole, choices, possible, outside, never);
    }

    static Asked wholeNumber(String quantity, String words, String hint, Range possible, boolean required) {
        return new Asked(
                quantity,
                words,
                hint,
                possible.unit(),
                required,
                true,
                List.of(),
                Optional.of(possible),
                value -> "",
                NOTHING);
    }

    static Asked choice(String quantity, String words, boolean required, List<Option> choices) {
        return new Asked(quantity, words, "", "", required, false, choices, Optional.empty(), value -> "", NOTHING);
    }

    static Asked text(String quantity, String words, String hint, boolean required) {
        return new Asked(quantity, words, hint, "", required, false, List.of(), Optional.empty(), value -> "", NOTHING);
    }

    public boolean isNumber() {
        return possible.isPresent();
    }

    public boolean isChoice() {
        return !choices.isEmpty();
    }

    /** What is wrong with what was typed, so that it cannot be kept; empty when it can. */
    Optional<String> refuse(String typed) {
        if (isChoice()) {
            return choices.stream().anyMatch(choice -> choice.value().equals(typed))
                    ? Optional.empty()
                    : Optional.of(words + ": choose one of the list.");
        }
        if (possible.isEmpty()) {
            return typed.length() <= MOST_TEXT
                    ? Optional.empty()
                    : Optional.of(words + ": " + MOST_TEXT + " characters fit; " + typed.length() + " are written.");
        }
        return refuseNumber(typed, possible.get());
    }

    private Optional<String> refuseNumber(String typed, Range range) {
        Optional<String> notPossible = Optional.of("%s: write %s from %s to %s %s."
                .formatted(
                        words, whole ? "a whole number" : "a number", plain(range.least()), plain(range.most()), unit));
        try {
            BigDecimal value = NumbersAsWritten.read(typed);
            boolean fits = range.holds(value.doubleValue())
                    && (!whole || value.stripTrailingZeros().scale() <= 0);
            return fits ? Optional.empty() : notPossible;
        } catch (NumberFormatException notANumber) {
            return notPossible;
        }
    }

    /** As an entry keeps it: numbers without grouping and unit. */
    String kept(String typed) {
        return isNumber() ? NumbersAsWritten.read(typed).toPlainString() : typed.strip();
    }

    /** What to do about a kept value outside its limits; empty when it lies inside. */
    Optional<String> ask(String kept) {
        return isNumber()
                ? Optional.of(outside.apply(Double.parseDouble(kept))).filter(text -> !text.isEmpty())
                : Optional.empty();
    }

    /** Whether no explanation makes this value good. */
    boolean isShutAt(String kept) {
        return isNumber() && shuts.test(Double.parseDouble(kept));
    }

    /** As people read it: "121.5 V", "ABC". */
    String shown(String kept) {
        return choices.stream()
                .filter(choice -> choice.value().equals(kept))
                .map(Option::words)
                .findFirst()
                .orElse(unit.isEmpty() ? kept : kept + " " + unit);
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
