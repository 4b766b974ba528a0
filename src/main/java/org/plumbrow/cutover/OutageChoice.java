package org.plumbrow.cutover;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** The window that somebody names: which hours, with which crew, and where it goes in bad weather. */
public record OutageChoice(
        LocalDate day,
        LocalTime start,
        int outageMinutes,
        UUID crewId,
        @Nullable LocalDate rainDay,
        @Nullable LocalTime rainStart) {

    OutageWindow.Plan plan() {
        return new OutageWindow.Plan(
                day,
                start,
                outageMinutes,
                crewId,
                rainDay == null || rainStart == null ? null : new OutageFacts.RainDate(rainDay, rainStart));
    }
}
