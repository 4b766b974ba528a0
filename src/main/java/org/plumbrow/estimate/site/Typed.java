package org.plumbrow.estimate.site;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.web.NumbersAsWritten;
import org.springframework.validation.Errors;

/** Reads what somebody typed; what cannot be read leaves a sentence at its field. */
record Typed(Errors errors) {

    private static final int DECIMALS = 6;

    static String text(@Nullable String typed) {
        return typed == null ? "" : typed.strip();
    }

    /** "0 to 90 degrees". */
    static String within(Range range) {
        return (plain(range.least()) + " to " + plain(range.most()) + " " + range.unit()).strip();
    }

    void refuse(String field, String sentence) {
        errors.rejectValue(field, "refused", sentence);
    }

    String name(String field, String what, @Nullable String typed, int longest) {
        String text = text(typed);
        if (text.isEmpty()) {
            refuse(field, "Write " + what + ".");
        } else if (text.length() > longest) {
            refuse(field, "Write %s in at most %d characters.".formatted(what, longest));
        }
        return text;
    }

    /** @return null for an empty field, and for one that is refused */
    @Nullable
    Double maybe(String field, String what, @Nullable String typed, Range range) {
        if (text(typed).isEmpty()) {
            return null;
        }
        try {
            double value = NumbersAsWritten.read(text(typed)).doubleValue();
            if (range.holds(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // said below
        }
        refuse(field, "Write %s as a number from %s.".formatted(what, within(range)));
        return null;
    }

    /** @return the least of the range where the field is refused, so that reading can go on */
    double number(String field, String what, @Nullable String typed, Range range) {
        Double value = maybe(field, what, typed, range);
        if (value == null && !errors.hasFieldErrors(field)) {
            refuse(field, "Write %s as a number from %s.".formatted(what, within(range)));
        }
        return value == null ? range.least() : value;
    }

    /** As people write it: 45, not 45.0; empty for none. */
    static String written(@Nullable Double value) {
        if (value == null) {
            return "";
        }
        BigDecimal exact = BigDecimal.valueOf(value)
                .setScale(DECIMALS, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return (exact.scale() < 0 ? exact.setScale(0) : exact).toPlainString().replace('-', '−');
    }

    private static String plain(double limit) {
        return String.format(Locale.US, limit == Math.rint(limit) ? "%,.0f" : "%s", limit)
                .replace('-', '−');
    }
}
