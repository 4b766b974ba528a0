package org.plumbrow.project.intake;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** What a column may hold, with the headings under which people keep it. */
enum IntakeField {
    REFERENCE("Reference", "reference", "ref", "id", "project id", "job", "job number", "number"),
    NAME("Name of the project", "name", "project", "project name", "site name"),
    CUSTOMER("Customer", "customer", "customer name", "owner"),
    STREET("Street", "street", "address", "site address"),
    TOWN("Town", "town", "city"),
    STATE("State", "state"),
    ZIP("ZIP code", "zip", "zip code", "postal code"),
    LATITUDE("Latitude, degrees", "latitude", "lat"),
    LONGITUDE("Longitude, degrees", "longitude", "lon", "lng", "long"),
    ON_SITE("What is on the site", "on site", "loads", "segment", "kind", "use"),
    METER("Meter number", "meter", "meter number"),
    UTILITY("Utility", "utility"),
    PERMIT_OFFICE("Permit office", "permit office", "office", "ahj"),
    MOUNTING("Mounting", "mounting", "mount"),
    GROUND_MOUNTED("Ground-mounted, yes or no", "ground mounted", "ground mount", "ground"),
    MODULES("Modules", "modules", "module count", "number of modules", "panels"),
    MODULE_W("Watts of one module", "module w", "module watts", "module power"),
    TILT("Tilt, degrees", "tilt", "tilt deg"),
    AZIMUTH("Azimuth, degrees from north", "azimuth", "azimuth deg"),
    SIZE_DC("System size, DC", "size kw dc", "size", "size kw", "size w", "system size", "kw", "kw dc", "size w dc"),
    SIZE_AC("System size, kW AC", "size kw ac", "kw ac"),
    INVERTERS("Inverters", "inverters", "inverter count", "number of inverters"),
    INVERTER_KW_AC("kW AC of one inverter", "inverter kw ac", "inverter kw"),
    GUARANTEED_KWH("Guaranteed kWh a year", "guaranteed kwh", "guarantee", "guaranteed kwh per year"),
    PRICE("Price, $", "price", "total price", "total price usd", "contract price"),
    PROMISED_ON("Promised date, system on", "promised", "promised date", "promise", "promised on"),
    OPERATING_SINCE(
            "Permission to operate, date",
            "permission to operate",
            "pto",
            "pto date",
            "permission date",
            "operating since");

    private final String words;
    private final Set<String> headings;

    IntakeField(String words, String... headings) {
        this.words = words;
        this.headings = Set.of(headings);
    }

    String words() {
        return words;
    }

    /** Whether a column of this heading holds it. */
    boolean isCalled(String heading) {
        return headings.contains(normal(heading));
    }

    /** The column that most likely holds it; -1 for none. */
    int guessed(List<String> header) {
        for (int i = 0; i < header.size(); i++) {
            if (isCalled(header.get(i))) {
                return i;
            }
        }
        return -1;
    }

    private static String normal(String heading) {
        return Arrays.stream(heading.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(" "));
    }
}
