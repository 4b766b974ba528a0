package org.plumbrow.cutover;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import org.plumbrow.cutover.ridethrough.OnSite;

/** What somebody has to say before an outage, because no record knows it. */
enum ReadyItem {
    INSPECTION("Permit and inspection allow the connection"),
    LOCKS("Locks and tags: every lock-off point matches the drawing"),
    SOURCES("All other sources known, and how each is isolated"),
    PARTS("Parts and calibrated tools counted on the truck"),
    KEYS("Keys or locksmith for every door and padlock"),
    FUEL("Generator fuelled, and run under the farm’s real load within 7 days", OnSite::hasGenerator),
    VENTILATION("Ventilation plan: who opens what without power, and when", OnSite::hasAnimals),
    STORES("Stores cooled down before, doors stay shut", OnSite::hasStores),
    MEDICAL("Plan for the medical equipment agreed with whoever depends on it", OnSite::medical),
    FORECAST("Forecast looked at: rain, lightning, wind, to two hours after the planned end"),
    PHONES("Numbers at hand: utility dispatch, emergency, veterinarian, rental, electrician on call"),
    PEOPLE("Nobody alone; first aid and fire extinguisher there");

    private final String words;
    private final Predicate<OnSite> asked;

    ReadyItem(String words) {
        this(words, site -> true);
    }

    ReadyItem(String words, Predicate<OnSite> asked) {
        this.words = words;
        this.asked = asked;
    }

    public String words() {
        return words;
    }

    /** As it stands in an address. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }

    boolean isAskedAt(OnSite site) {
        return asked.test(site);
    }

    static Optional<ReadyItem> of(String slug) {
        return Arrays.stream(values()).filter(item -> item.slug().equals(slug)).findFirst();
    }
}
