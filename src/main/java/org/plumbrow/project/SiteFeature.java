package org.plumbrow.project;

import java.util.ArrayList;
import java.util.List;

/** What else the service on the site has that decides gate items and the day of the cutover. */
public enum SiteFeature {
    GENERATOR("generator"),
    THREE_PHASE("three phases"),
    SUPPLY_SIDE_TAP("supply-side tap");

    private final String words;

    SiteFeature(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    static List<SiteFeature> of(ProjectFacts.Site site) {
        List<SiteFeature> there = new ArrayList<>();
        if (site.generator()) {
            there.add(GENERATOR);
        }
        if (site.threePhase()) {
            there.add(THREE_PHASE);
        }
        if (site.supplySideTap()) {
            there.add(SUPPLY_SIDE_TAP);
        }
        return there;
    }
}
