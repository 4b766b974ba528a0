package org.plumbrow.schedule.plan;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Standing;

/** A job that nobody has signed: the few figures that say how much work it is. */
public record ThoughtJob(
        Mounting mounting,
        BigDecimal kwDc,
        @Nullable Integer trenchFt,
        @Nullable UUID utilityId,
        @Nullable UUID permitOfficeId) {

    public ProjectFacts of(UUID id, UUID branchId, Instant now) {
        return new ProjectFacts(
                id,
                branchId,
                "",
                "the new job",
                null,
                Standing.OPEN,
                1,
                now,
                "",
                new ProjectFacts.Site(
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        Set.of(),
                        false,
                        false,
                        false,
                        utilityId,
                        permitOfficeId,
                        List.of()),
                new ProjectFacts.Contract(
                        kwDc,
                        null,
                        List.of(new ProjectFacts.ArrayFacts(mounting, null, null, null, null)),
                        null,
                        null,
                        null,
                        null,
                        trenchFt,
                        null,
                        null,
                        null),
                null,
                Map.of());
    }
}
