package org.plumbrow.notice;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A notice was given up after its last try. Published in the transaction that says so, with the rows of its branch in
 * reach.
 *
 * @param reason a sentence: why it did not leave
 */
public record NoticeNotSent(
        UUID noticeId,
        NoticeKind kind,
        @Nullable UUID branchId,
        @Nullable UUID projectId,
        String subject,
        String reason) {}
