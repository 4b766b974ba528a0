package org.plumbrow.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.springframework.validation.Errors;

/** The one reader of what somebody typed into the fields of a form; what cannot be read leaves a sentence at its field. */
public record Entered(Errors errors) {

    private static final long NO_VERSION = Long.MIN_VALUE;
    private static final int DECIMALS = 6;

    public static String text(@Nullable String typed) {
        return typed == null ? "" : typed.strip();
    }

    public static @Nullable String orNull(@Nullable String typed) {
        String text = text(typed);
        return text.isEmpty() ? null : text;
    }

    /** "0 to 90 degrees": the hint of a figure within these limits. */
    public static String hint(Range range) {
        return (plain(range.least()) + " to " + plain(range.most()) + " " + range.unit()).strip();
    }

    /** As people write it: 45, not 45.0; empty for none. */
    public static String written(@Nullable Double value) {
        if (value == null) {
            return "";
        }
        BigDecimal exact = BigDecimal.valueOf(value)
                .setScale(DECIMALS, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return (exact.scale() < 0 ? exact.setScale(0) : exact).toPlainString().replace('-', '−');
    }

    /** The version as the form carried it; one that no thing has where it did not. */
    public static long version(@Nullable String carried) {
        try {
            return Long.parseLong(text(carried));
        } catch (NumberFormatException missing) {
            return NO_VERSION;
        }
    }

    public void refuse(String field, String sentence) {
        errors.rejectValue(field, "refused", sentence);
    }

    /** @param what the field as the sentence's object: "the name" */
    public String given(String field, String what, @Nullable String typed, int longest) {
        String text = text(typed);
        if (text.isEmpty()) {
            refuse(field, "Write " + what + ".");
        }
        return within(field, what, text, longest);
    }

    public String within(String field, String what, @Nullable String typed, int longest) {
        String text = text(typed);
        if (text.length() > longest) {
            refuse(field, "Write " + what + " in at most " + longest + " characters.");
        }
        return text;
    }

    /** @return null for an empty field, or for one that cannot be read, which is refused */
    public @Nullable BigDecimal number(String field, String what, @Nullable String typed, Range range) {
        return figure(field, numberWanted(what, range), typed, range, false);
    }

    /** As {@link #number}, for figures that are only measured. */
    public @Nullable Double maybe(String field, String what, @Nullable String typed, Range range) {
        BigDecimal value = number(field, what, typed, range);
        return value == null ? null : value.doubleValue();
    }

    /** @return the least of the range where the field is empty or cannot be read, so that reading can go on */
    public double required(String field, String what, @Nullable String typed, Range range) {
        Double value = maybe(field, what, typed, range);
        if (value == null && !errors.hasFieldErrors(field)) {
            refuse(field, numberWanted(what, range));
        }
        return value == null ? range.least() : value;
    }

    private static String numberWanted(String what, Range range) {
        return "Write " + what + " as a number from " + hint(range) + ".";
    }

    /** As {@link #number} for whole numbers. */
    public @Nullable Integer whole(String field, String what, @Nullable String typed, Range range) {
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
    public @Nullable LocalDate date(String field, String what, @Nullable String typed) {
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
    public <E extends Enum<E>> Optional<E> choice(String field, Class<E> choices, @Nullable String chosen) {
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
    public <E extends Enum<E>> List<E> choices(String field, Class<E> choices, @Nullable List<String> chosen) {
        return chosen == null
                ? List.of()
                : chosen.stream()
                        .map(one -> choice(field, choices, one))
                        .flatMap(Optional::stream)
                        .toList();
    }

    private static String plain(double limit) {
        return String.format(Locale.US, limit == Math.rint(limit) ? "%,.0f" : "%s", limit)
                .replace('-', '−');
    }
}
