package org.plumbrow.calc.energy.weather;

/** A reading as it stood in the file. */
final class NumberWords {

    private NumberWords() {}

    static String of(double value) {
        return value == Math.rint(value) ? "%,.0f".formatted(value) : "%,.1f".formatted(value);
    }
}
