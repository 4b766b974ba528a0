package org.plumbrow.web;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Numbers as people write them: "1,250", "1 250", "121 V", "−4", "$18,240". Grouping commas and blanks go, one unit
 * behind and a currency sign before go; anything else is not a number.
 */
public final class NumbersAsWritten {

    private static final Pattern NUMBER = Pattern.compile(
            "\\$?([-−+]?)((?:\\d{1,3}(?:[, \\u00a0\\u202f]\\d{3})+|\\d+)(?:\\.\\d+)?|\\.\\d+)\\s*[\\p{L}°%/²³Ω]{0,12}");

    private NumbersAsWritten() {}

    /** @throws NumberFormatException if it is not one number, with at most one unit behind */
    public static BigDecimal read(String written) {
        Matcher number = NUMBER.matcher(written.strip());
        if (!number.matches()) {
            throw new NumberFormatException("not a number: " + written);
        }
        BigDecimal value = new BigDecimal(number.group(2).replaceAll("[, \\u00a0\\u202f]", ""));
        return number.group(1).isEmpty() || number.group(1).equals("+") ? value : value.negate();
    }

    static Number read(String written, Class<?> type) {
        BigDecimal value = read(written);
        if (type == Integer.class) {
            long whole = whole(value);
            if (whole != (int) whole) {
                throw new NumberFormatException("too large: " + written);
            }
            return (int) whole;
        }
        if (type == Long.class) {
            return whole(value);
        }
        return type == Double.class ? (Number) value.doubleValue() : value;
    }

    private static long whole(BigDecimal value) {
        try {
            return value.longValueExact();
        } catch (ArithmeticException fractionOrTooLarge) {
            throw new NumberFormatException("not a whole number that fits: " + value.toPlainString());
        }
    }

    static String write(Number number) {
        return number instanceof BigDecimal exact ? exact.toPlainString() : String.format(Locale.ROOT, "%s", number);
    }
}
