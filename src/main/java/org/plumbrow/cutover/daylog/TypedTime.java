package org.plumbrow.cutover.daylog;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.daylog.LogPen.Said;

/** A time as a form sends it ("09:05") or as a person types it ("9:05 am"). */
record TypedTime(@Nullable LocalTime time, boolean isTime) {

    private static final List<DateTimeFormatter> TYPED = Stream.of("H:mm", "H:mm:ss", "h:mm a", "h:mma")
            .map(TypedTime::pattern)
            .toList();

    private static DateTimeFormatter pattern(String pattern) {
        return new DateTimeFormatterBuilder()
                .parseCaseInsensitive()
                .appendPattern(pattern)
                .toFormatter(Locale.US);
    }

    /** Nothing typed is no time, and in order. */
    static TypedTime of(@Nullable String typed) {
        if (typed == null || typed.isBlank()) {
            return new TypedTime(null, true);
        }
        for (DateTimeFormatter pattern : TYPED) {
            Optional<LocalTime> time = read(typed.strip(), pattern);
            if (time.isPresent()) {
                return new TypedTime(time.get(), true);
            }
        }
        return new TypedTime(null, false);
    }

    private static Optional<LocalTime> read(String typed, DateTimeFormatter pattern) {
        try {
            return Optional.of(LocalTime.parse(typed, pattern));
        } catch (DateTimeException another) {
            return Optional.empty();
        }
    }

    static Said refused(String field) {
        return Said.refused(field, "Write the time like 09:05.");
    }
}
