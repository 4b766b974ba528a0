package org.plumbrow.design;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;

/**
 * What a frozen revision says there is to build, counted from its data. Durations, and so dates, are made from it.
 *
 * @param trenchFt null when the design has no buried run: then nobody has said that there is none
 * @param boreFt of what lies under streets and driveways; null likewise
 */
public record DrawnQuantities(
        String revision,
        List<OfArray> arrays,
        int inverters,
        double kwAc,
        @Nullable Double trenchFt,
        @Nullable Double boreFt) {

    public DrawnQuantities {
        arrays = List.copyOf(arrays);
    }

    /** @param posts its share by modules of all posts on the ground; null when the racking is not described */
    public record OfArray(
            String mark,
            Mounting mounting,
            double kwDc,
            int modules,
            int strings,
            @Nullable Integer posts) {}

    public static DrawnQuantities of(DesignFacts design) {
        return Counting.of(design);
    }

    public int modules() {
        return arrays.stream().mapToInt(OfArray::modules).sum();
    }

    public double kwDc() {
        return arrays.stream().mapToDouble(OfArray::kwDc).sum();
    }
}
