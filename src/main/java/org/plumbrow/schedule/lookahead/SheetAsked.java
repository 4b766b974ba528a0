package org.plumbrow.schedule.lookahead;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.springframework.format.annotation.DateTimeFormat;

/**
 * What the address of a grid of days asks for.
 *
 * @param from any day of the first week shown; today's week if missing
 * @param plan {@code published} shows that plan though there is a draft
 */
record SheetAsked(
        @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) @Nullable
        LocalDate from,

        @Nullable String plan) {

    boolean wantsPublished() {
        return "published".equals(plan);
    }
}
