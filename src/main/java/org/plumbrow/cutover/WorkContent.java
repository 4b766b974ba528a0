package org.plumbrow.cutover;

import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.EquipmentKind;

/**
 * What a project's cutover page says of the work, beyond the site's facts.
 *
 * @param plannedMinutes what the project manager plans instead of the computed minutes; null to follow them
 * @param readyOn first day on which the work before the outage is done; null to follow the plan
 * @param readyAfter what is awaited until then: "AC gear not landed"; may be empty
 * @param equipment shared machines that the work needs; none where each crew has all of its own
 * @param version 0 as long as nobody has written it
 */
record WorkContent(
        boolean mainPanel,
        boolean meterBase,
        boolean newTransformer,
        boolean currentTransformers,
        int meters,
        boolean oldGear,
        @Nullable Integer plannedMinutes,
        @Nullable LocalDate readyOn,
        String readyAfter,
        Set<EquipmentKind> equipment,
        long version) {

    static final WorkContent USUAL = new WorkContent(false, false, false, false, 1, false, null, null, "", Set.of(), 0);

    WorkContent {
        equipment = Set.copyOf(equipment);
    }
}
