package org.plumbrow.cutover.ridethrough;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitle;

/**
 * How long everything on a site stands without power, begun at one hour.
 *
 * @param weather what the hour's weather is made from; null where there is none
 * @param generator null where none is written
 * @param waits what has no figure because there is no weather
 */
record WithoutPowerView(
        ProjectTitle title,
        ProjectFacts project,
        HourForm.Hour hour,
        @Nullable String weather,
        List<LoadCard> cards,
        @Nullable GeneratorCard generator,
        boolean waits,
        OnSite site,
        boolean mayWrite) {

    /** What the page says first, as the key of the sentence. */
    public String headline() {
        if (cards.isEmpty()) {
            return waits ? "waits" : "nothing";
        }
        if (cards.stream().anyMatch(card -> card.alarm().equals("talk"))) {
            return "talk";
        }
        if (opening() != null && (shortest() == null || shortest().alarm().equals("long"))) {
            return "opens";
        }
        return shortest() == null ? "nofigure" : "shortest";
    }

    /** The load whose short end comes first; null where none has one. */
    public @Nullable LoadCard shortest() {
        return cards.stream()
                .filter(card -> card.first().shortEnd().isPresent())
                .min(java.util.Comparator.comparingDouble(
                        card -> card.first().shortEnd().orElseThrow()))
                .orElse(null);
    }

    /** What stands only while something opens without power; null for none. */
    public @Nullable LoadCard opening() {
        return cards.stream()
                .filter(card -> card.alarm().equals("opens"))
                .findFirst()
                .orElse(null);
    }

    /** A kind of thing and how many of it are written. */
    public record KindLine(LoadKind kind, int written) {}

    public List<KindLine> kinds() {
        return Arrays.stream(LoadKind.values())
                .map(kind -> new KindLine(kind, site.rows(kind).size()))
                .toList();
    }
}
