package org.plumbrow.estimate.site;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.weather.WeatherYear.Origin;

/**
 * A typical year of the library, without its hours.
 *
 * @param station as the file has it; may be empty
 * @param invented the branch made it up, for practice or a demo
 * @param evidenceId the file; null for monthly means
 * @param endedAt no longer offered for projects; those that use it keep it
 */
public record WeatherCard(
        UUID id,
        UUID branchId,
        long version,
        String name,
        Origin origin,
        String station,
        Place place,
        boolean invented,
        @Nullable UUID evidenceId,
        WeatherSummary summary,
        Instant addedAt,
        String addedBy,
        @Nullable Instant endedAt) {

    public boolean fromMeans() {
        return origin == Origin.MONTHLY_MEANS;
    }

    public boolean ended() {
        return endedAt != null;
    }

    /** "EPW file", "made from twelve monthly means". */
    public String kind() {
        return origin.words();
    }

    /** Straight line to a project, km; empty where the project has no coordinates. */
    public Optional<Double> kmTo(@Nullable Number latitudeDeg, @Nullable Number longitudeDeg) {
        return latitudeDeg == null || longitudeDeg == null
                ? Optional.empty()
                : Optional.of(place.distanceKmTo(new Place(
                        latitudeDeg.doubleValue(),
                        longitudeDeg.doubleValue(),
                        place.elevationM(),
                        place.utcOffsetHours())));
    }
}
