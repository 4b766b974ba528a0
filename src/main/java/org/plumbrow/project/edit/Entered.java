package org.plumbrow.project.edit;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.web.NumbersAsWritten;
import org.springframework.validation.Errors;

/** Reads what somebody typed into the fields of a form; what cannot be read leaves a sentence at its field. */
record Entered(Errors errors) {

    static String text(@Nullable String typed) {
        return typed == null ? "" : typed.strip();
    }

    static @Nullable String orNull(@Nullable String typed) {
        String text = text(typed);
        return text.isEmpty() ? null : text;
    }

    /** "0 to 90 degrees": the hint of a figure within these limits. */
    static String hint(Range range) {
        return plain(range.least()) + " to " + plain(range.most()) + " " + range.unit();
    }

    void refuse(String field, String sentence) {
        errors.rejectValue(field, "refused", sentence);
    }

    /** @param what the field as the sentence's object: "the name" */
    String given(String field, String what, @Nullable String typed, int longest) {
        String text = text(typed);
        if (text.isEmpty()) {
            refuse(field, "Write " + what + ".");
        }
        return within(field, what, text, longest);
    }

    String within(String field, String what, @Nullable String typed, int longest) {
        String text = text(typed);
        if (text.length() > longest) {
            refuse(field, "Write " + what + " in at most " + longest + " characters.");
        }
        return text;
    }

    /** @return null for an empty field, or for one that cannot be read, which is refused */
    @Nullable
    BigDecimal number(String field, String what, @Nullable String typed, Range range) {
        return figure(field, "Write " + what + " as a number from " + hint(range) + ".", typed, range, false);
    }

    /** As {@link #number} for whole numbers. */
    @Nullable
    Integer whole(String field, String what, @Nullable String typed, Range range) {
        BigDecimal value =
                figure(field, "Write " + what + " as a whole number from " + hint(range) + ".", typed, range, true);
        return value == null ? null : value.intValueExact();
    }

    private @Nullable BigDecimal figure(
            String field, String sentence, @Nullable String typed, Range range, boolean whole) {
        if (text(typed).isEmpty()) {
            return null;
        }
        try {
            BigDecimal value = NumbersAsWritten.read(text(typed));
            boolean fits = !whole || value.stripTrailingZeros().scale() <= 0;
            if (fits && range.holds(value.doubleValue())) {
                return value;
            }
        } catch (NumberFormatException e) {
            // said below
        }
        refuse(field, sentence);
        return null;
    }

    /** @return null for an empty field or one that holds no date, which is refused */
    @Nullable
    LocalDate date(String field, String what, @Nullable String typed) {
        if (text(typed).isEmpty()) {
            return null;
        }
        try {
            LocalDate date = LocalDate.parse(text(typed));
            if (date.getYear() >= 2000 && date.getYear() <= 2100) {
                return date;
            }
        } catch (DateTimeParseException e) {
            // said below
        }
        refuse(field, "Write " + what + " as a date from 2000 on, for example 2027-03-26.");
        return null;
    }

    /** One of a list; empty when nothing is chosen. */
    <E extends Enum<E>> Optional<E> choice(String field, Class<E> choices, @Nullable String chosen) {
        if (text(chosen).isEmpty()) {
            return Optional.empty();
        }
        Optional<E> known = Arrays.stream(choices.getEnumConstants())
                .filter(choice -> choice.name().equals(text(chosen)))
                .findFirst();
        if (known.isEmpty()) {
            refuse(field, "Choose one of the list.");
        }
        return known;
    }

    /** Any of a list. */
    <E extends Enum<E>> List<E> choices(String field, Class<E> choices, @Nullable List<String> chosen) {
        return chosen == null
                ? List.of()
                : chosen.stream()
                        .map(one -> choice(field, choices, one))
                        .flatMap(Optional::stream)
                        .toList();
    }

    private static String plain(double limit) {
        return String.format(java.util.Locale.US, limit == Math.rint(limit) ? "%,.0f" : "%s", limit)
                .replace('-', '−');
    }
}
