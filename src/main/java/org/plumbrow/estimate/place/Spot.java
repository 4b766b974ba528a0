package org.plumbrow.estimate.place;

import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.energy.Plane;

/**
 * A plane of the roof, or the field, with the modules that it holds by rule of thumb.
 *
 * @param kwhPerKw a year; null while there is no estimate
 * @param shadePercent that the horizon takes of it; null while there is no estimate or no horizon
 * @param acresPerKw land; 0 on a roof
 */
record Spot(
        String name,
        Plane plane,
        int modules,
        double kwDc,
        @Nullable Double kwhPerKw,
        @Nullable Double shadePercent,
        double acresPerKw) {

    double orNothing() {
        return kwhPerKw == null ? 0 : kwhPerKw;
    }
}
