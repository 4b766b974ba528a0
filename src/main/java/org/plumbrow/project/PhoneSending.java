package org.plumbrow.project;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What a phone says of a thing that it has kept and sends now.
 *
 * @param id made by the phone, for this thing alone
 * @param personId who was signed in when it was written
 * @param writtenAt by the phone's clock; null if it did not say
 */
public record PhoneSending(UUID id, UUID personId, @Nullable Instant writtenAt) {

    private static final Pattern ID = Pattern.compile("[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}");

    /** As it came; empty if the id or the person is none. */
    public static Optional<PhoneSending> of(String id, String personId, String writtenAt) {
        if (!ID.matcher(id).matches() || !ID.matcher(personId).matches()) {
            return Optional.empty();
        }
        return Optional.of(new PhoneSending(UUID.fromString(id), UUID.fromString(personId), instant(writtenAt)));
    }

    private static @Nullable Instant instant(String written) {
        try {
            return Instant.parse(written);
        } catch (DateTimeException notSaid) {
            return null;
        }
    }
}
