package org.plumbrow.project.gate.page;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Days as a form sends them; what is none keeps its typed text. */
final class Days {

    static final String REFUSAL = "Choose a day, for example 2027-03-05.";

    private Days() {}

    static Optional<LocalDate> read(@Nullable String typed) {
        try {
            return Optional.of(LocalDate.parse(ItemForm.text(typed)));
        } catch (DateTimeException noDay) {
            return Optional.empty();
        }
    }
}
