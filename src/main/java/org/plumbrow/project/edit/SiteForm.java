package org.plumbrow.project.edit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectLimits;
import org.plumbrow.project.SiteFeature;
import org.plumbrow.project.SiteLoad;
import org.plumbrow.web.Entered;

/** Where a project is built and what is there, as typed. */
record SiteForm(
        @Nullable String street,
        @Nullable String town,
        @Nullable String state,
        @Nullable String zip,
        @Nullable String coordinates,
        @Nullable List<String> loads,
        @Nullable List<String> features,
        @Nullable String utility,
        @Nullable String permitOffice,
        @Nullable String meterNumbers,
        @Nullable String version) {

    private static final Pattern PAIR = Pattern.compile(
            "([+-]?\\d{1,3}(?:\\.\\d+)?)\\s*°?\\s*([NS]?)[\\s,;]+([+-]?\\d{1,3}(?:\\.\\d+)?)\\s*°?\\s*([EW]?)");
    private static final String COORDINATES =
            "Write the coordinates as latitude and longitude in degrees, for example 40.7934, -77.8600.";
    private static final Pattern METER = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ./-]{0,39}");

    static SiteForm of(Values values, long version) {
        return new SiteForm(
                values.get("street"),
                values.get("town"),
                values.get("state"),
                values.get("zip"),
                values.get("coordinates"),
                values.list("loads"),
                values.list("features"),
                values.get("utility"),
                values.get("permitOffice"),
                values.get("meterNumbers"),
                Long.toString(version));
    }

    /** @return what was typed; only to be used when nothing was refused */
    ProjectFacts.Site read(Entered entered, SiteChoices choices) {
        @Nullable BigDecimal[] place = place(entered);
        List<SiteFeature> there = entered.choices("features", SiteFeature.class, features);
        EnumSet<SiteLoad> on = EnumSet.noneOf(SiteLoad.class);
        on.addAll(entered.choices("loads", SiteLoad.class, loads));
        return new ProjectFacts.Site(
                Entered.orNull(entered.within("street", "the street", street, ProjectLimits.LONGEST_NAME)),
                Entered.orNull(entered.within("town", "the town", town, ProjectLimits.LONGEST_NAME)),
                Entered.orNull(entered.within("state", "the state", state, 40)),
                Entered.orNull(entered.within("zip", "the zip code", zip, 12)),
                place[0],
                place[1],
                on,
                there.contains(SiteFeature.GENERATOR),
                there.contains(SiteFeature.THREE_PHASE),
                there.contains(SiteFeature.SUPPLY_SIDE_TAP),
                id(entered, "utility", utility, choices.utilityIds()),
                id(entered, "permitOffice", permitOffice, choices.permitOfficeIds()),
                meters(entered));
    }

    private @Nullable BigDecimal[] place(Entered entered) {
        String text = Entered.text(coordinates).toUpperCase(Locale.ROOT).replace('−', '-');
        if (text.isEmpty()) {
            return new BigDecimal[] {null, null};
        }
        Matcher pair = PAIR.matcher(text);
        if (pair.matches()) {
            BigDecimal latitude = degrees(pair.group(1), pair.group(2).equals("S"));
            BigDecimal longitude = degrees(pair.group(3), pair.group(4).equals("W"));
            if (ProjectLimits.LATITUDE_DEG.holds(latitude.doubleValue())
                    && ProjectLimits.LONGITUDE_DEG.holds(longitude.doubleValue())) {
                return new BigDecimal[] {latitude, longitude};
            }
        }
        entered.refuse("coordinates", COORDINATES);
        return new BigDecimal[] {null, null};
    }

    /** Six decimals are a hand's width; more is not kept. */
    private static BigDecimal degrees(String text, boolean negative) {
        BigDecimal degrees = new BigDecimal(text).setScale(6, java.math.RoundingMode.HALF_UP);
        return negative ? degrees.abs().negate() : degrees;
    }

    private static @Nullable UUID id(Entered entered, String field, @Nullable String chosen, List<UUID> known) {
        String text = Entered.text(chosen);
        if (text.isEmpty()) {
            return null;
        }
        return known.stream()
                .filter(id -> id.toString().equals(text))
                .findFirst()
                .orElseGet(() -> {
                    entered.refuse(field, "Choose one of the list.");
                    return null;
                });
    }

    private List<String> meters(Entered entered) {
        List<String> meters = new ArrayList<>();
        for (String part : Entered.text(meterNumbers).split("[,;\\n]")) {
            String meter = part.strip();
            if (!meter.isEmpty() && !METER.matcher(meter).matches()) {
                entered.refuse(
                        "meterNumbers",
                        "Write the meter numbers with commas between them, each of letters and digits.");
                return List.of();
            }
            if (!meter.isEmpty()) {
                meters.add(meter);
            }
        }
        if (meters.size() > ProjectLimits.MOST_METERS) {
            entered.refuse("meterNumbers", "Write at most " + ProjectLimits.MOST_METERS + " meter numbers.");
        }
        return meters;
    }

    /** The form's own fields as they were typed, in the order and under the labels of the stored ones. */
    List<Written> written(List<Written> stored, SiteChoices choices) {
        return stored.stream()
                .map(field -> {
                    String typed = Entered.text(typed(field.name()));
                    return Written.of(
                            field.label(),
                            field.name(),
                            typed,
                            choices.words(typed).orElse(typed));
                })
                .toList();
    }

    private @Nullable String typed(String name) {
        return switch (name) {
            case "street" -> street;
            case "town" -> town;
            case "state" -> state;
            case "zip" -> zip;
            case "coordinates" -> coordinates;
            case "loads" -> loads == null ? "" : String.join(",", loads);
            case "features" -> features == null ? "" : String.join(",", features);
            case "utility" -> utility;
            case "permitOffice" -> permitOffice;
            case "meterNumbers" -> meterNumbers;
            default -> throw new IllegalArgumentException("no field " + name);
        };
    }
}
