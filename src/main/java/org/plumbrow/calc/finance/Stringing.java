package org.plumbrow.calc.finance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.Range;

/**
 * How modules may be put in strings.
 *
 * @param fewest modules in a string, 1 to 60
 * @param most modules in a string, from the fewest to 60
 */
public record Stringing(int fewest, int most) {

    public static final Range LENGTH = new Range(1, 60, "modules");
    /** Every module on its own: any number fits. */
    public static final Stringing NONE = new Stringing(1, 1);

    /** @throws Range.OutOfRange if a length is outside its range */
    public Stringing {
        LENGTH.check("shortest string", fewest);
        new Range(fewest, LENGTH.most(), "modules").check("longest string", most);
    }

    /**
     * Fewest strings of nearly equal length that hold so many modules.
     *
     * @return lengths, longest first; empty when no such strings make that number
     */
    public Optional<List<Integer>> lengths(int modules) {
        if (modules == 0) {
            return Optional.of(List.of());
        }
        int strings = (modules + most - 1) / most;
        if (strings * fewest > modules) {
            return Optional.empty();
        }
        List<Integer> lengths = new ArrayList<>();
        for (int string = 0; string < strings; string++) {
            lengths.add(modules / strings + (string < modules % strings ? 1 : 0));
        }
        return Optional.of(lengths);
    }

    boolean fits(int modules) {
        return modules >= 0 && (modules == 0 || (modules + most - 1) / most * fewest <= modules);
    }

    String words() {
        return fewest == most
                ? "Strings of %d modules".formatted(most)
                : "Strings of %d to %d modules".formatted(fewest, most);
    }
}
