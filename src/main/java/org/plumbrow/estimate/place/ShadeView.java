package org.plumbrow.estimate.place;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.ProjectTitle;

/**
 * Both horizons of a project and what they take, as the page shows it.
 *
 * @param beforeRead directions that were read before the work; @param dayOneRead and again on day one
 * @param kept directions that day one left out, where the reading before counts
 * @param year null while the estimate lacks something or nothing was read
 */
record ShadeView(
        ProjectTitle title,
        int beforeRead,
        int dayOneRead,
        int kept,
        List<Reading> readings,
        HorizonPlot plot,
        @Nullable ShadeYield year,
        List<Lack> lacks) {

    /** @param difference degrees, higher on day one is positive; null where one of the two is missing */
    record Reading(
            String direction,
            @Nullable Double before,
            @Nullable Double dayOne,
            @Nullable Double difference) {}

    public boolean isReadTwice() {
        return beforeRead > 0 && dayOneRead > 0;
    }

    public boolean isRead() {
        return beforeRead > 0 || dayOneRead > 0;
    }
}
