package org.plumbrow.calc.duration;

import java.util.List;

/**
 * How a duration came about, for a page to open.
 *
 * @param inputs what went in, with unit and where it is from
 * @param steps the computation line by line; the last line is the result
 * @param sources of the rates, each once
 */
public record Explanation(List<Input> inputs, List<String> steps, List<String> sources) {

    /** @param estimated whether a rule stands in for a count: the result is then "about" */
    public record Input(String words, double value, String unit, boolean estimated, String origin) {}

    public Explanation {
        inputs = List.copyOf(inputs);
        steps = List.copyOf(steps);
        sources = List.copyOf(sources);
    }

    public boolean isEstimate() {
        return inputs.stream().anyMatch(Input::estimated);
    }
}
