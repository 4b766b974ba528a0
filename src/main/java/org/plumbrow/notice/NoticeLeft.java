package org.plumbrow.notice;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A notice has left the house: by mail, or a person passed it on. Published in the transaction that says so, with the
 * rows of its branch in reach.
 *
 * @param about what the notice was about, as its writer said
 * @param how "by e-mail", "passed on by Tamsin"
 */
public record NoticeLeft(
        UUID noticeId, @Nullable UUID branchId, @Nullable UUID projectId, String about, String how, Instant at) {}
