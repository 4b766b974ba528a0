package org.plumbrow.branch.place;

import java.time.ZoneId;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchFacts.Yard;
import org.plumbrow.branch.Travel;
import org.plumbrow.branch.Written;

/** What a branch is called, where it lives, and how its crews drive. */
public record PlaceTerms(String name, ZoneId zone, Optional<Yard> yard, Travel travel) {

    static PlaceTerms of(BranchFacts branch) {
        return new PlaceTerms(branch.name(), branch.zone(), branch.yard(), branch.travel());
    }

    List<Written> written() {
        return List.of(
                Written.of("Name", "name", name),
                Written.of("Time zone", "zone", zone, zone.getDisplayName(TextStyle.FULL, Locale.US)),
                Written.of("Yard", "yardAddress", yard.map(Yard::address).orElse("")),
                Written.of(
                        "Yard, latitude",
                        "yardLatitude",
                        yard.map(place -> Written.figure(place.latitudeDeg())).orElse(null)),
                Written.of(
                        "Yard, longitude",
                        "yardLongitude",
                        yard.map(place -> Written.figure(place.longitudeDeg())).orElse(null)),
                Written.of("Travel, mph", "travelSpeedMph", Written.figure(travel.speedMph())),
                Written.of("Road for straight line", "travelRoadFactor", Written.figure(travel.roadFactor())));
    }
}
