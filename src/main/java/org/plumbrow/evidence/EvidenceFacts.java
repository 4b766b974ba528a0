package org.plumbrow.evidence;

import java.time.Instant;
import java.time.LocalDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A piece of evidence as pages show it; its bytes are asked for one by one.
 *
 * @param mediaType of the file; empty for a typed signature, which has none
 * @param takenAt by the camera's own clock, which knows no zone; null where the file does not say
 * @param signature null for anything else
 */
public record EvidenceFacts(
        UUID id,
        UUID branchId,
        @Nullable UUID projectId,
        EvidenceKind kind,
        String mediaType,
        long sizeBytes,
        String name,
        String caption,
        @Nullable LocalDateTime takenAt,
        @Nullable Signature signature,
        Instant at,
        String byName,
        boolean hidden) {

    /** Who signed, for what trade or part, and the words that were signed. */
    public record Signature(String name, String trade, String text, boolean drawn) {}

    /** A typed signature has none: there is nothing to open. */
    public boolean hasFile() {
        return !mediaType.isEmpty();
    }

    public boolean isPicture() {
        return mediaType.startsWith("image/");
    }

    public String href() {
        return "/evidence/" + id;
    }

    public String thumbnailHref() {
        return href() + "/thumbnail";
    }
}
