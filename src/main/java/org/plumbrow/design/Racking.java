package org.plumbrow.design;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * What the maker's table or the engineer's letter says of the racking; inputs are never designed here.
 *
 * @param frostIn depth that the letter assumes
 * @param letterBy engineer, with licence
 */
public record Racking(
        @Nullable Integer posts,
        @Nullable Double postLengthFt,
        @Nullable Double embedmentIn,
        @Nullable Double exposedIn,
        @Nullable Double postSpacingFt,
        @Nullable Double frontClearanceIn,
        @Nullable Double windMph,
        @Nullable Double snowPsf,
        @Nullable Double frostIn,
        @Nullable Double siteWindMph,
        @Nullable Double siteSnowPsf,
        @Nullable Double siteFrostIn,
        @Nullable String letterBy,
        @Nullable LocalDate letterDate,
        @Nullable UUID letterEvidence) {}
