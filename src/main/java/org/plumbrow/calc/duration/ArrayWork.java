package org.plumbrow.calc.duration;

import java.util.Map;
import java.util.Set;
import org.plumbrow.calc.Range;

/**
 * One array of a project.
 *
 * @param kwDc its size, kW DC, 0.1 to 20000
 * @param foundation read for a ground mount only
 * @param known what is already counted, of modules, posts and strings; the rest is estimated
 */
public record ArrayWork(Mounting mounting, Foundation foundation, double kwDc, Map<QuantityKind, Double> known) {

    public static final Range SIZE = new Range(0.1, 20_000, "kW DC");

    private static final Set<QuantityKind> OF_AN_ARRAY =
            Set.of(QuantityKind.MODULES, QuantityKind.POSTS, QuantityKind.STRINGS);

    public ArrayWork {
        SIZE.check("size of the array", kwDc);
        known = Map.copyOf(known);
        known.forEach((kind, amount) -> kind.range().check(kind.words(), amount));
        if (!OF_AN_ARRAY.containsAll(known.keySet())) {
            throw new IllegalArgumentException("an array has modules, posts and strings, not " + known.keySet());
        }
    }

    public static ArrayWork of(Mounting mounting, double kwDc) {
        return new ArrayWork(mounting, Foundation.DRIVEN_POSTS, kwDc, Map.of());
    }

    public ArrayWork with(QuantityKind kind, double amount) {
        Map<QuantityKind, Double> more = new java.util.EnumMap<>(QuantityKind.class);
        more.putAll(known);
        more.put(kind, amount);
        return new ArrayWork(mounting, foundation, kwDc, more);
    }
}
