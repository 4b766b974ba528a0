package org.plumbrow.web.link;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * A link that opens, now.
 *
 * @param subjectId what it opens: a crew, a contact
 * @param path where it leads, on this server: for the people who may hand it on, never for a log
 * @param lastVisitAt empty as long as nobody opened it
 */
public record PrivateLink(
        UUID id,
        UUID branchId,
        LinkKind kind,
        UUID subjectId,
        String path,
        Instant madeAt,
        String madeBy,
        Instant validUntil,
        Optional<Instant> lastVisitAt) {}
