package org.plumbrow.project.list;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Which projects are looked at; what is on hold, called off or commissioned is not in the default list. */
enum Show {
    UNDER_WAY,
    COMMISSIONED,
    ON_HOLD,
    CALLED_OFF,
    ALL;

    static Optional<Show> of(@Nullable String asked) {
        return Arrays.stream(values())
                .filter(show -> show.inAddress().equals(asked))
                .findFirst();
    }

    public String inAddress() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
