package org.plumbrow.design;

import org.jspecify.annotations.Nullable;

/**
 * The customer's generator and its switch.
 *
 * @param arrayOnUtilitySide whether the array meets the service on the utility's side of the switch, so that the two
 *     never feed the same wires
 * @param interlock how they are kept apart, in words; empty when not said
 */
public record Generator(
        @Nullable Double kva, String switchKind, String place, boolean arrayOnUtilitySide, String interlock) {}
