package org.plumbrow.calc.duration;

/**
 * An amount and where it comes from.
 *
 * @param estimated whether a rule stands in for a count
 * @param origin "given", or the rule: "one post for every 3 modules (common practice, no source)"
 */
public record Quantity(QuantityKind kind, double amount, boolean estimated, String origin) {

    static Quantity given(QuantityKind kind, double amount) {
        return new Quantity(kind, amount, false, "given");
    }

    static Quantity estimated(QuantityKind kind, double amount, String rule) {
        return new Quantity(kind, amount, true, rule + " (common practice, no source)");
    }
}
