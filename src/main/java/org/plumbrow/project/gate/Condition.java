package org.plumbrow.project.gate;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.SiteLoad;

/**
 * Where an item is asked: on any of these sites, or where somebody says that it must be.
 *
 * @param sites any of them is enough; empty for everywhere, unless {@code askedWhere} is given
 * @param askedWhere words of what no project says of itself ("the permit office asks for it"): then the item is asked,
 *     and may be answered by "does not apply, because"; empty where the project's own data decide
 */
public record Condition(List<Site> sites, String askedWhere) {

    static final Condition EVERYWHERE = new Condition(List.of(), "");
    private static final BigDecimal LARGE_KW = new BigDecimal("25");

    /** Whether an item is asked of a project. */
    public enum Applies {
        YES,
        /** Nobody can tell from the data: asked, or "does not apply, because". */
        ASK,
        NO
    }

    /** What a project says of itself. */
    public enum Site {
        GROUND_MOUNT("ground mount", facts -> facts.contract().has(Mounting.GROUND)),
        FLAT_ROOF("flat roof", facts -> facts.contract().has(Mounting.FLAT_ROOF)),
        PITCHED_ROOF("pitched roof", facts -> facts.contract().has(Mounting.PITCHED_ROOF)),
        POULTRY("poultry houses", facts -> facts.site().has(SiteLoad.POULTRY)),
        SWINE("swine houses", facts -> facts.site().has(SiteLoad.SWINE)),
        DAIRY("dairy", facts -> facts.site().has(SiteLoad.DAIRY)),
        COLD_STORE("cold store", facts -> facts.site().has(SiteLoad.COLD_STORE)),
        GREENHOUSE("greenhouse", facts -> facts.site().has(SiteLoad.GREENHOUSE)),
        HOME("home", facts -> facts.site().has(SiteLoad.HOME)),
        FARM("farm", facts -> facts.site().isFarm()),
        UTILITY("a utility is named", facts -> facts.site().utilityId() != null),
        GENERATOR("generator", facts -> facts.site().generator()),
        SUPPLY_SIDE("supply-side tap", facts -> facts.site().supplySideTap()),
        THREE_PHASE("three phases", facts -> facts.site().threePhase()),
        FROM_25_KW(
                "25 kW DC and more",
                facts -> facts.contract().systemKwDc() != null
                        && facts.contract().systemKwDc().compareTo(LARGE_KW) >= 0);

        private final String words;
        private final Predicate<ProjectFacts> holds;

        Site(String words, Predicate<ProjectFacts> holds) {
            this.words = words;
            this.holds = holds;
        }

        public String words() {
            return words;
        }

        private boolean isMounting() {
            return this == GROUND_MOUNT || this == FLAT_ROOF || this == PITCHED_ROOF;
        }

        private boolean isUnknown(ProjectFacts facts) {
            return (isMounting() && facts.contract().arrays().isEmpty())
                    || (this == UTILITY && facts.site().utilityId() == null)
                    || (this == FROM_25_KW && facts.contract().systemKwDc() == null);
        }
    }

    public Condition {
        sites = List.copyOf(sites);
    }

    public boolean isEverywhere() {
        return sites.isEmpty() && askedWhere.isEmpty();
    }

    public Applies to(ProjectFacts facts) {
        if (isEverywhere() || sites.stream().anyMatch(site -> site.holds.test(facts))) {
            return Applies.YES;
        }
        boolean nobodyCanTell = !askedWhere.isEmpty() || sites.stream().anyMatch(site -> site.isUnknown(facts));
        return nobodyCanTell ? Applies.ASK : Applies.NO;
    }

    /** "ground mount, flat roof", "where the permit office asks for it"; empty for everywhere. */
    public String words() {
        String where = sites.stream().map(Site::words).collect(Collectors.joining(", "));
        if (askedWhere.isEmpty()) {
            return where;
        }
        return (where.isEmpty() ? "" : where + ", or ") + "where " + askedWhere;
    }

    static Condition read(String sites, String askedWhere) {
        return new Condition(
                sites.isBlank()
                        ? List.of()
                        : Arrays.stream(sites.split("\\|"))
                                .map(name -> Site.valueOf(name.toUpperCase(Locale.ROOT)))
                                .toList(),
                askedWhere.strip());
    }

    String writtenSites() {
        return sites.stream().map(site -> site.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining("|"));
    }
}
