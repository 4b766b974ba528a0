package org.plumbrow.branch.utility;

import jakarta.validation.constraints.NotNull;
import java.time.LocalTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Refusal;

/** Hours in which a utility switches, as typed. */
record SlotForm(
        @NotNull(message = "Write from when power may go off, for example 9:00 am.") @Nullable
        LocalTime from,

        @NotNull(message = "Write until when, for example 4:00 pm.") @Nullable
        LocalTime to,

        @Nullable LocalTime backBy) {

    static final SlotForm EMPTY = new SlotForm(null, null, null);

    Optional<Refusal> outOfOrder() {
        if (!from.isBefore(to)) {
            return Optional.of(new Refusal("to", "This lies before the beginning. Choose a later time."));
        }
        return backBy != null && !to.isBefore(backBy)
                ? Optional.of(new Refusal(
                        "backBy",
                        "Power cannot be back before it may still go off. Choose a later time, or leave it empty."))
                : Optional.empty();
    }
}
