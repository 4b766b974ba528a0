package org.plumbrow.calc.finance;

import java.util.List;
import java.util.Optional;

/**
 * One system that could be built.
 *
 * @param modules whole number, 0 or more
 * @param strings their lengths, longest first
 * @param offset production over use; empty when there is no use
 * @param forbiddenBy the first limit that it breaks
 */
public record SizeOption(
        int modules,
        List<Integer> strings,
        double kwDc,
        double kwAc,
        double kwh,
        Optional<Double> offset,
        Optional<SizeLimit> forbiddenBy) {

    SizeOption forbidden(Optional<SizeLimit> by) {
        return new SizeOption(modules, strings, kwDc, kwAc, kwh, offset, by);
    }
}
