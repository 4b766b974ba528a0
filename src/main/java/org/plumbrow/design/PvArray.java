package org.plumbrow.design;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;

/**
 * One array: all its modules lie in one plane.
 *
 * @param onDwelling on a one- or two-family house: at most 600 V
 * @param tables rows of tables on the ground, or rows on the roof, from south (or eave) to north
 * @param modulesHigh modules one above the other in a row
 * @param portrait whether the long side runs up the slope
 * @param modulesWide modules beside one another in each row, row by row
 * @param rowPitchFt from the front edge of a row to the front edge of the next; null with one row or flush on a roof
 * @param setbackFt free strip around it (boundary, fire path)
 */
public record PvArray(
        String mark,
        String name,
        Mounting mounting,
        boolean onDwelling,
        double tiltDeg,
        double azimuthDeg,
        ModuleType module,
        boolean portrait,
        int modulesHigh,
        List<Integer> modulesWide,
        @Nullable Double rowPitchFt,
        @Nullable Double setbackFt,
        @Nullable Double planeLengthFt,
        @Nullable Double planeWidthFt,
        List<Obstruction> obstructions) {

    public PvArray {
        modulesWide = List.copyOf(modulesWide);
        obstructions = List.copyOf(obstructions);
    }

    public int rows() {
        return modulesWide.size();
    }

    public int modules() {
        return modulesHigh * modulesWide.stream().mapToInt(Integer::intValue).sum();
    }

    public double kwDc() {
        return modules() * module.powerW() / 1000;
    }
}
