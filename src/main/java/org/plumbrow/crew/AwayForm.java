package org.plumbrow.crew;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.calendar.Half;
import org.springframework.web.util.UriComponentsBuilder;

/** An absence as typed; without a last day it ends on the first. */
record AwayForm(
        @NotNull(message = "Choose the first day of the absence.") @Nullable
        LocalDate firstDay,

        @NotNull(message = "Choose whether it begins in the morning or the afternoon.") @Nullable
        Half firstHalf,

        @Nullable LocalDate lastDay,

        @NotNull(message = "Choose whether it ends in the morning or the afternoon.") @Nullable
        Half lastHalf,

        @NotNull(message = "Choose the reason.") @Nullable AwayReason reason,

        @Size(max = 200, message = "Write at most 200 characters.") @Nullable
        String note) {

    /** Whole days. */
    static final AwayForm EMPTY = new AwayForm(null, Half.MORNING, null, Half.AFTERNOON, null, "");

    AwayTime time() {
        return new AwayTime(
                firstDay,
                firstHalf,
                lastDay == null ? firstDay : lastDay,
                lastHalf,
                reason,
                note == null ? "" : note.strip());
    }

    /** Where a POST enters that absence again: the way to undo its removal. */
    static String enterAgain(String address, AwayTime time) {
        return UriComponentsBuilder.fromPath(address)
                .queryParam("firstDay", time.firstDay())
                .queryParam("firstHalf", time.firstHalf())
                .queryParam("lastDay", time.lastDay())
                .queryParam("lastHalf", time.lastHalf())
                .queryParam("reason", time.reason())
                .queryParam("note", "{note}")
                .build(time.note())
                .toString();
    }
}
