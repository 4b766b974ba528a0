package org.plumbrow.web;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names as people put them in order: "Crew 2" before "Crew 10", whatever is capital. */
public final class NaturalOrder {

    private static final Pattern PARTS = Pattern.compile("\\d+|\\D+");

    public static final Comparator<String> OF_NAMES =
            ((Comparator<String>) NaturalOrder::compare).thenComparing(Comparator.naturalOrder());

    private NaturalOrder() {}

    private static int compare(String one, String other) {
        List<String> left = parts(one);
        List<String> right = parts(other);
        for (int at = 0; at < Math.min(left.size(), right.size()); at++) {
            int order = part(left.get(at), right.get(at));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(left.size(), right.size());
    }

    private static List<String> parts(String name) {
        List<String> parts = new ArrayList<>();
        Matcher matcher = PARTS.matcher(name.toLowerCase(Locale.ROOT));
        while (matcher.find()) {
            parts.add(matcher.group());
        }
        return parts;
    }

    private static int part(String one, String other) {
        return isNumber(one) && isNumber(other)
                ? new BigInteger(one).compareTo(new BigInteger(other))
                : one.compareTo(other);
    }

    private static boolean isNumber(String part) {
        return part.charAt(0) >= '0' && part.charAt(0) <= '9';
    }
}
