package org.plumbrow.project;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;

/**
 * The fields of each part of a project as they stand written: one list for the form, for the page that lays theirs
 * beside yours, for the journal and for undoing. A figure is written as a person would type it again.
 */
public final class PartFields {

    private static final Map<String, String> CONTRACT_LABELS = Map.ofEntries(
            Map.entry("systemKwDc", "system size DC"),
            Map.entry("systemKwAc", "system size AC"),
            Map.entry("inverters", "inverters"),
            Map.entry("inverterKwAc", "power of one inverter"),
            Map.entry("posts", "posts"),
            Map.entry("strings", "strings"),
            Map.entry("trenchFt", "trench"),
            Map.entry("boreFt", "bore"),
            Map.entry("guaranteedKwh", "guaranteed energy a year"),
            Map.entry("priceUsd", "price"),
            Map.entry("mounting", "mounting"),
            Map.entry("modules", "modules"),
            Map.entry("moduleW", "power of one module"),
            Map.entry("tilt", "tilt"),
            Map.entry("azimuth", "azimuth"));
    private static final Pattern ARRAY_FIELD = Pattern.compile("arrays\\[(\\d+)]\\.(\\w+)");

    private PartFields() {}

    /** What people call a field of the contract. */
    public static String label(String name) {
        Matcher ofArray = ARRAY_FIELD.matcher(name);
        String own = ofArray.matches() ? ofArray.group(2) : name;
        String label = Objects.requireNonNull(CONTRACT_LABELS.get(own), name);
        return ofArray.matches() ? "array " + (Integer.parseInt(ofArray.group(1)) + 1) + ": " + label : label;
    }

    /** @param nameOf the name of a utility or permit office by its id */
    public static List<Written> site(ProjectFacts.Site site, Function<UUID, String> nameOf) {
        return List.of(
                Written.of("street", "street", site.street()),
                Written.of("town", "town", site.town()),
                Written.of("state", "state", site.state()),
                Written.of("zip code", "zip", site.zip()),
                Written.of("coordinates", "coordinates", coordinates(site)),
                Written.of(
                        "what is on the site",
                        "loads",
                        ProjectSite.joined(site.loads()),
                        site.loads().isEmpty()
                                ? "none"
                                : site.loads().stream()
                                        .sorted()
                                        .map(SiteLoad::words)
                                        .collect(Collectors.joining(", "))),
                features(site),
                named("utility", "utility", site.utilityId(), nameOf),
                named("permit office", "permitOffice", site.permitOfficeId(), nameOf),
                Written.of("meter numbers", "meterNumbers", String.join(", ", site.meterNumbers())));
    }

    public static List<Written> contract(ProjectFacts.Contract contract) {
        List<Written> fields = new ArrayList<>(List.of(
                figure("systemKwDc", contract.systemKwDc(), "kW"),
                figure("systemKwAc", contract.systemKwAc(), "kW"),
                figure("inverters", contract.inverters(), ""),
                figure("inverterKwAc", contract.inverterKwAc(), "kW AC"),
                figure("posts", contract.posts(), ""),
                figure("strings", contract.strings(), ""),
                figure("trenchFt", contract.trenchFt(), "ft"),
                figure("boreFt", contract.boreFt(), "ft"),
                figure("guaranteedKwh", contract.guaranteedKwhPerYear(), "kWh"),
                figure("priceUsd", contract.priceUsd(), "dollars")));
        for (int i = 0; i < contract.arrays().size(); i++) {
            addArray(fields, contract.arrays().get(i), i);
        }
        return fields;
    }

    private static void addArray(List<Written> fields, ProjectFacts.ArrayFacts array, int i) {
        String name = "arrays[" + i + "].";
        fields.add(Written.of(
                label(name + "mounting"),
                name + "mounting",
                array.mounting().name(),
                array.mounting().words()));
        fields.add(figure(name + "modules", array.modules(), ""));
        fields.add(figure(name + "moduleW", array.moduleW(), "W"));
        fields.add(figure(name + "tilt", array.tiltDeg(), "degrees"));
        fields.add(figure(name + "azimuth", array.azimuthDeg(), "degrees"));
    }

    /** A person with an account by id, anybody else by name. */
    public static List<Written> people(Map<Duty, ProjectFacts.InCharge> people) {
        List<Written> fields = new ArrayList<>();
        for (Duty duty : Duty.values()) {
            ProjectFacts.InCharge who = people.get(duty);
            String id =
                    who == null || who.personId() == null ? "" : who.personId().toString();
            String name = who == null ? "" : who.name();
            String form = "duties[" + duty.ordinal() + "].";
            fields.add(Written.of(duty.words(), form + "person", id, id.isEmpty() ? "" : name));
            fields.add(Written.of(duty.words() + ", by name", form + "name", id.isEmpty() ? name : ""));
        }
        return fields;
    }

    private static @Nullable String coordinates(ProjectFacts.Site site) {
        return site.latitudeDeg() == null || site.longitudeDeg() == null
                ? null
                : site.latitudeDeg().toPlainString() + ", "
                        + site.longitudeDeg().toPlainString();
    }

    private static Written features(ProjectFacts.Site site) {
        List<SiteFeature> there = SiteFeature.of(site);
        return Written.of(
                "service",
                "features",
                there.stream().map(SiteFeature::name).collect(Collectors.joining(",")),
                there.isEmpty()
                        ? "nothing special"
                        : there.stream().map(SiteFeature::words).collect(Collectors.joining(", ")));
    }

    private static Written named(String label, String name, @Nullable UUID id, Function<UUID, String> nameOf) {
        return Written.of(label, name, id, id == null ? "" : nameOf.apply(id));
    }

    private static Written figure(String name, @Nullable Number value, String unit) {
        String label = label(name);
        if (value == null) {
            return Written.of(label, name, null);
        }
        String text = value instanceof BigDecimal exact ? exact.toPlainString() : value.toString();
        return Written.of(label, name, text, unit.isEmpty() ? text : text + " " + unit);
    }
}
