package org.plumbrow.design;

import org.jspecify.annotations.Nullable;

/**
 * The point of interconnection.
 *
 * @param breakerA of the array in the panel; null for a tap
 * @param otherDevicesA sum of all other load and supply breakers on the bus, for the sum rule; null unknown
 * @param otherSourcesA continuous output of sources already there
 * @param newMainA where the main is made smaller
 * @param dwelling a house
 */
public record Connection(
        ConnectionKind kind,
        @Nullable Double breakerA,
        @Nullable Double otherDevicesA,
        double otherSourcesA,
        @Nullable Double newMainA,
        boolean dwelling,
        String place) {}
