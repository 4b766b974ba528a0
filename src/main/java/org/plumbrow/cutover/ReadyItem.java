package org.plumbrow.cutover;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiPredicate;
import org.plumbrow.cutover.ridethrough.OnSite;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.SiteLoad;

/** What somebody has to say before an outage, because no record knows it. */
enum ReadyItem {
    INSPECTION("Permit and inspection allow the connection"),
    LOCKS("Locks and tags: every lock-off point matches the drawing"),
    SOURCES("All other sources known, and how each is isolated"),
    PARTS("Parts and calibrated tools counted on the truck"),
    KEYS("Keys or locksmith for every door and padlock"),
    FUEL(
            "Generator fuelled, and run under the farm’s real load within 7 days",
            (site, project) -> site.hasGenerator() || project.site().generator()),
    VENTILATION(
            "Ventilation plan: who opens what without power, and when",
            (site, project) -> site.hasAnimals()
                    || project.site().has(SiteLoad.POULTRY)
                    || project.site().has(SiteLoad.SWINE)),
    STORES(
            "Stores cooled down before, doors stay shut",
            (site, project) -> site.hasStores() || project.site().has(SiteLoad.COLD_STORE)),
    MEDICAL("Plan for the medical equipment agreed with whoever depends on it", (site, project) -> site.medical()),
    FORECAST("Forecast looked at: rain, lightning, wind, to two hours after the planned end"),
    PHONES("Numbers at hand: utility dispatch, emergency, veterinarian, rental, electrician on call"),
    PEOPLE("Nobody alone; first aid and fire extinguisher there");

    private final String words;
    private final BiPredicate<OnSite, ProjectFacts> asked;

    ReadyItem(String words) {
        this(words, (site, project) -> true);
    }

    ReadyItem(String words, BiPredicate<OnSite, ProjectFacts> asked) {
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

    /** @param project what the site is known to have counts before anybody has written its figures */
    boolean isAskedAt(OnSite site, ProjectFacts project) {
        return asked.test(site, project);
    }

    static Optional<ReadyItem> of(String slug) {
        return Arrays.stream(values()).filter(item -> item.slug().equals(slug)).findFirst();
    }
}
