package org.plumbrow.design;

import org.jspecify.annotations.Nullable;

/** Where strings come together. @param fuseA of each string; null without fuses */
public record Combiner(
        String mark, String place, int circuits, @Nullable Double fuseA, double ratedV, double ratedA) {}
