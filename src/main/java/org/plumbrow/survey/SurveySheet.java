package org.plumbrow.survey;

import java.time.Instant;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.branch.UtilityFacts;

/**
 * All parts of one survey as they are stored.
 *
 * @param disconnectMostFt what the project's utility allows between its disconnect and its meter; the usual where it is not
 *     known
 */
record SurveySheet(Map<SurveyPart, StoredPart> parts, int disconnectMostFt) {

    static final SurveySheet EMPTY = new SurveySheet(Map.of(), UtilityFacts.USUAL_DISCONNECT_FT);

    SurveySheet {
        parts = parts.isEmpty() ? Map.of() : new EnumMap<>(parts);
    }

    /** @param version counts the changes of this part */
    record StoredPart(SurveyPart part, long version, PartReadings readings, Instant changedAt, String changedBy) {}

    Optional<StoredPart> stored(SurveyPart part) {
        return Optional.ofNullable(parts.get(part));
    }

    PartReadings readings(SurveyPart part) {
        return stored(part).map(StoredPart::readings).orElse(PartReadings.EMPTY);
    }

    /** 0 for a part in which nothing was ever written. */
    long version(SurveyPart part) {
        return stored(part).map(StoredPart::version).orElse(0L);
    }

    long version() {
        return parts.values().stream().mapToLong(StoredPart::version).sum();
    }
}
