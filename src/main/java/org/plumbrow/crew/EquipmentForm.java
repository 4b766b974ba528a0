package org.plumbrow.crew;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.EquipmentKind;

/** A shared machine as typed; a new one has no version. */
record EquipmentForm(
        @NotNull(message = "Choose what kind of machine it is.") @Nullable
        EquipmentKind kind,

        @NotBlank(message = "Write what people call it, for example Post driver 2.")
        @Size(max = 60, message = "Write at most 60 characters.")
        @Nullable
        String name,

        @NotNull(message = "Choose the first day on which it can be booked.") @Nullable
        LocalDate from,

        @Nullable LocalDate until,
        @Nullable Long version) {

    static EquipmentForm startingOn(LocalDate day) {
        return new EquipmentForm(null, "", day, null, null);
    }

    static EquipmentForm of(EquipmentFacts machine) {
        return new EquipmentForm(
                machine.kind(), machine.name(), machine.from(), machine.until().orElse(null), machine.version());
    }

    EquipmentTerms terms() {
        return new EquipmentTerms(kind, name.strip(), from, until);
    }
}
