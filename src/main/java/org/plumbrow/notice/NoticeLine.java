package org.plumbrow.notice;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A notice in a list.
 *
 * @param settledAt when it was sent, passed on, given up or withdrawn; null while it waits
 * @param reason why it was not sent, or not yet; empty if there is nothing to say
 */
public record NoticeLine(
        UUID id,
        NoticeKind kind,
        String toName,
        String toAddress,
        String subject,
        NoticeState state,
        String reason,
        int tries,
        Instant createdAt,
        @Nullable Instant settledAt,
        String settledBy) {}
