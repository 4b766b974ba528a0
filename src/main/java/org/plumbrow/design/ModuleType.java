package org.plumbrow.design;

import org.jspecify.annotations.Nullable;

/**
 * A module as its data sheet tells it, at standard test conditions (1,000 W/m², cell at 25 °C).
 *
 * @param vocTempPercentPerC change of open-circuit voltage, percent of it a kelvin, below 0; null when the sheet is silent
 * @param vmpTempPercentPerC change of the voltage at most power, likewise; never the same as the one above
 * @param pmaxTempPercentPerC change of the most power, likewise
 * @param iscTempPercentPerC change of the short-circuit current, likewise, above 0
 * @param maxSeriesFuseA the largest fuse that may stand in a string of it
 * @param maxSystemV the highest voltage to ground that it bears
 * @param noctC temperature of its cells at 800 W/m², 20 °C air, 1 m/s wind
 */
public record ModuleType(
        String name,
        double powerW,
        double vocV,
        double vmpV,
        double iscA,
        double impA,
        @Nullable Double vocTempPercentPerC,
        @Nullable Double vmpTempPercentPerC,
        double pmaxTempPercentPerC,
        double iscTempPercentPerC,
        int cellsInSeries,
        double maxSeriesFuseA,
        double maxSystemV,
        double noctC,
        int longSideMm,
        int shortSideMm) {}
