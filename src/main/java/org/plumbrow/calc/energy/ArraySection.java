package org.plumbrow.calc.energy;

import java.util.Optional;
import org.plumbrow.calc.Range;

/**
 * Modules of one kind on one plane.
 *
 * @param name as people call it: "Shed south"
 * @param kwDc rating of its modules, kW, more than 0, at most 100000
 * @param plane which way they face
 * @param module what the modules are like
 * @param heating how they are mounted, as far as the wind cools them
 * @param rows the rows they stand in, when one shades the next
 * @param horizon what stands around them
 */
public record ArraySection(
        String name,
        double kwDc,
        Plane plane,
        ModuleTraits module,
        CellHeating heating,
        Optional<Rows> rows,
        Optional<Horizon> horizon) {

    public static final Range KW_DC = new Range(0.01, 100_000, "kW");

    /** @throws Range.OutOfRange if the rating is outside its range or not a number */
    public ArraySection {
        KW_DC.check("array rating", kwDc);
    }

    /** Usual modules on an open rack, nothing in the way. */
    public static ArraySection open(String name, double kwDc, Plane plane) {
        return new ArraySection(
                name,
                kwDc,
                plane,
                ModuleTraits.USUAL,
                CellHeating.Faiman.OPEN_RACK,
                Optional.empty(),
                Optional.empty());
    }

    public ArraySection with(Rows between) {
        return new ArraySection(name, kwDc, plane, module, heating, Optional.of(between), horizon);
    }

    public ArraySection with(Horizon around) {
        return new ArraySection(name, kwDc, plane, module, heating, rows, Optional.of(around));
    }

    public ArraySection with(CellHeating other) {
        return new ArraySection(name, kwDc, plane, module, other, rows, horizon);
    }

    public ArraySection with(ModuleTraits other) {
        return new ArraySection(name, kwDc, plane, other, heating, rows, horizon);
    }

    public ArraySection facing(Plane other) {
        return new ArraySection(name, kwDc, other, module, heating, rows, horizon);
    }
}
