package org.plumbrow.project.edit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.PermitOfficeFacts;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.SiteFeature;
import org.plumbrow.project.SiteLoad;
import org.plumbrow.web.Option;

/** What the lists of the site's form offer: those the branch works with, and the one that is chosen already. */
record SiteChoices(List<Option> utilities, List<Option> permitOffices) {

    static SiteChoices of(
            List<UtilityFacts> utilities, List<PermitOfficeFacts> offices, ProjectFacts.@Nullable Site now) {
        List<Option> utilityOptions = new ArrayList<>(List.of(new Option("", "not known yet")));
        utilities.stream()
                .filter(utility -> utility.endedOn().isEmpty()
                        || now != null && utility.id().equals(now.utilityId()))
                .forEach(utility -> utilityOptions.add(new Option(utility.id().toString(), utility.name())));
        List<Option> officeOptions = new ArrayList<>(List.of(new Option("", "not known yet")));
        offices.stream()
                .filter(office ->
                        office.endedOn().isEmpty() || now != null && office.id().equals(now.permitOfficeId()))
                .forEach(office -> officeOptions.add(new Option(office.id().toString(), office.name())));
        return new SiteChoices(utilityOptions, officeOptions);
    }

    List<UUID> utilityIds() {
        return ids(utilities);
    }

    List<UUID> permitOfficeIds() {
        return ids(permitOffices);
    }

    public List<Option> loads() {
        return Arrays.stream(SiteLoad.values())
                .map(load -> new Option(load.name(), load.words()))
                .toList();
    }

    public List<Option> features() {
        return Arrays.stream(SiteFeature.values())
                .map(feature -> new Option(feature.name(), feature.words()))
                .toList();
    }

    /** What a person reads for a value of these lists. */
    Optional<String> words(String value) {
        return java.util.stream.Stream.of(utilities, permitOffices)
                .flatMap(List::stream)
                .filter(option -> option.value().equals(value))
                .map(Option::words)
                .findFirst();
    }

    private static List<UUID> ids(List<Option> options) {
        return options.stream()
                .map(Option::value)
                .filter(value -> !value.isEmpty())
                .map(UUID::fromString)
                .toList();
    }
}
