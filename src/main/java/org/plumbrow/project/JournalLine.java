package org.plumbrow.project;

import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One line of a project's journal as it stands. */
public record JournalLine(
        UUID projectId,
        int number,
        String kind,
        String sentence,
        Map<String, String> facts,
        Instant at,
        @Nullable UUID byPersonId,
        String byName) {}
