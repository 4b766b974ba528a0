package org.plumbrow.design;

import org.jspecify.annotations.Nullable;

/**
 * Modules in series on one input of an inverter.
 *
 * @param input counted from 1
 * @param firstModule number of its first module in the array, counted from 1 row by row; the others follow
 * @param combiner mark of the combiner in which it ends; null when it runs to the inverter by itself
 */
public record PvString(
        String mark,
        String array,
        String inverter,
        int input,
        int modules,
        int firstModule,
        @Nullable String combiner) {}
