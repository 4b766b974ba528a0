package org.plumbrow.branch.place;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchFacts.Yard;
import org.plumbrow.branch.Travel;
import org.plumbrow.branch.Written;
import org.plumbrow.web.Refusal;

/** Name, zone, yard and travel as typed. */
record PlaceForm(
        @NotBlank(message = "Write what the branch is called.")
        @Size(max = 120, message = "Write at most 120 characters.")
        @Nullable
        String name,

        @NotBlank(message = "Choose the time zone of the branch.") @Nullable
        String zone,

        @Size(max = 200, message = "Write at most 200 characters.") @Nullable
        String yardAddress,

        @DecimalMin(value = "-90", message = LATITUDE) @DecimalMax(value = "90", message = LATITUDE) @Nullable
        BigDecimal yardLatitude,

        @DecimalMin(value = "-180", message = LONGITUDE) @DecimalMax(value = "180", message = LONGITUDE) @Nullable
        BigDecimal yardLongitude,

        @NotNull(message = SPEED)
        @DecimalMin(value = "5", message = SPEED)
        @DecimalMax(value = "80", message = SPEED)
        @Nullable
        BigDecimal travelSpeedMph,

        @NotNull(message = FACTOR)
        @DecimalMin(value = "1", message = FACTOR)
        @DecimalMax(value = "3", message = FACTOR)
        @Nullable
        BigDecimal travelRoadFactor,

        @NotNull(message = "Open the page again: it was sent without its version.") @Nullable
        Long version) {

    private static final String LATITUDE = "Write the latitude in degrees from −90 to 90, for example 41.9037.";
    private static final String LONGITUDE = "Write the longitude in degrees from −180 to 180, for example −77.6210.";
    private static final String SPEED = "Write the speed in miles an hour, from 5 to 80.";
    private static final String FACTOR = "Write how much longer the road is than the straight line, from 1 to 3.";

    static PlaceForm of(BranchFacts branch) {
        Optional<Yard> yard = branch.yard();
        return new PlaceForm(
                branch.name(),
                branch.zone().getId(),
                yard.map(Yard::address).orElse(""),
                yard.map(place -> Written.figure(place.latitudeDeg())).orElse(null),
                yard.map(place -> Written.figure(place.longitudeDeg())).orElse(null),
                Written.figure(branch.travel().speedMph()),
                Written.figure(branch.travel().roadFactor()),
                branch.version());
    }

    Optional<Refusal> wrong() {
        if ((yardLatitude == null) != (yardLongitude == null)) {
            return Optional.of(new Refusal(
                    yardLatitude == null ? "yardLatitude" : "yardLongitude",
                    "Write both coordinates of the yard, or none."));
        }
        if (yardLatitude == null && yardAddress != null && !yardAddress.isBlank()) {
            return Optional.of(new Refusal(
                    "yardLatitude", "Write the yard's coordinates too: travel starts there, and no map is asked."));
        }
        return ZoneId.getAvailableZoneIds().contains(zone)
                ? Optional.empty()
                : Optional.of(new Refusal("zone", "Choose the time zone of the branch."));
    }

    PlaceTerms terms() {
        Optional<Yard> yard = yardLatitude == null || yardLongitude == null
                ? Optional.empty()
                : Optional.of(new Yard(
                        yardAddress == null ? "" : yardAddress.strip(),
                        yardLatitude.doubleValue(),
                        yardLongitude.doubleValue()));
        return new PlaceTerms(
                name.strip(),
                ZoneId.of(zone),
                yard,
                new Travel(travelSpeedMph.doubleValue(), travelRoadFactor.doubleValue()));
    }
}
