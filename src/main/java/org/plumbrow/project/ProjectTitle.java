package org.plumbrow.project;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The title block of every page of a project, and the links under it:
 * {@code <th:block th:replace="~{project/block :: block(${title})}"/>}.
 *
 * @param onSite what is on the site: "dairy", "home, generator"; may be empty
 * @param reachedOn when the stage was reached; null for a new project
 * @param forecastShape a status shape: {@code part} in time, {@code trouble} late, {@code unknown} not planned
 */
public record ProjectTitle(
        UUID id,
        String number,
        String name,
        String place,
        String onSite,
        @Nullable BigDecimal systemKwDc,
        @Nullable BigDecimal systemKwAc,
        String mounting,
        String stage,
        @Nullable LocalDate reachedOn,
        Standing standing,
        @Nullable String milestone,
        @Nullable LocalDate promisedOn,
        String forecastShape,
        @Nullable LocalDate plannedOn,
        @Nullable String manager,
        List<Link> links) {

    /** A page of this project. */
    public record Link(String key, String href) {}
}
