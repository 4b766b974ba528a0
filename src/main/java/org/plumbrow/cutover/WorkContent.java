package org.plumbrow.cutover;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a project's cutover page says of the work, beyond the site's facts.
 *
 * @param plannedMinutes what the project manager plans instead of the computed minutes; null to follow them
 * @param readyOn first day on which the work before the outage is done; null to follow the plan
 * @param readyAfter what is awaited until then: "AC gear not landed"; may be empty
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
        long version) {

    static final WorkContent USUAL = new WorkContent(false, false, false, false, 1, false, null, null, "", 0);
}
