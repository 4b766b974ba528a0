package org.plumbrow.project.gate;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One part of an answer as it stands, with who gave it and when.
 *
 * @param note a remark, or why a reading outside its limits stays
 * @param since the item's version with which it came
 */
public record AnswerPart(
        UUID id,
        AnswerKind kind,
        @Nullable BigDecimal number,
        String text,
        String label,
        @Nullable LocalDate date,
        @Nullable UUID evidenceId,
        String note,
        Instant at,
        String byName,
        long since) {}
