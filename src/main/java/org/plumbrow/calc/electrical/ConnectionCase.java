package org.plumbrow.calc.electrical;

import org.jspecify.annotations.Nullable;

/**
 * Where the array meets the service. What is not known is null; the checks that need it cannot tell.
 *
 * @param rule by which it meets the bus
 * @param outputA continuous output of all inverters on the service's voltage
 * @param otherSourcesA continuous output of sources already there
 * @param deviceA of the array at the point of interconnection
 * @param devicesSumA of all load and source devices but the main, the array's included, for the sum rule
 * @param serviceConductorsA ampacity, for a tap ahead of the main
 */
public record ConnectionCase(
        Service service,
        Busbar.Rule rule,
        double outputA,
        double otherSourcesA,
        double kwAc,
        @Nullable Double busA,
        @Nullable Double mainA,
        @Nullable Double deviceA,
        @Nullable Double devicesSumA,
        @Nullable Double serviceConductorsA,
        @Nullable Double interruptingKa,
        @Nullable Double faultKa,
        @Nullable Double transformerKva) {}
