package org.plumbrow.design;

import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.calc.electrical.Service;

/**
 * The customer's service as surveyed.
 *
 * @param highestV the highest line-to-line voltage that was read there
 * @param mainA rating of the main device
 * @param busA rating of the busbar
 * @param interruptingKa what the gear can interrupt
 * @param faultKa what can flow there in a short circuit, by the utility
 * @param conductorA ampacity of the service conductors, for a tap ahead of the main
 * @param disconnectMostFt how far from its meter the utility lets its disconnect stand; null: the usual
 */
public record ServicePoint(
        @Nullable Service type,
        @Nullable Double highestV,
        @Nullable String meterNumber,
        @Nullable Double mainA,
        @Nullable Double busA,
        @Nullable Double interruptingKa,
        @Nullable Double faultKa,
        @Nullable Double conductorA,
        @Nullable Double transformerKva,
        @Nullable String transformerNumber,
        @Nullable Integer disconnectMostFt) {

    public int disconnectAtMostFt() {
        return disconnectMostFt == null ? UtilityFacts.USUAL_DISCONNECT_FT : disconnectMostFt;
    }
}
