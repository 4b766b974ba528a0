package org.plumbrow.survey;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The parts of a survey, in the order in which a surveyor walks; each has a page, a version and readings of its own. */
enum SurveyPart {
    SERVICE("service", "Service", ServiceSheet.GROUPS),
    ROOF("roof", "Roof", SiteSheets.ROOF),
    GROUND("ground", "Ground", SiteSheets.GROUND),
    ROUTES("routes", "Routes", SiteSheets.ROUTES),
    SHADE("shade", "Shade", SiteSheets.SHADE),
    ACCESS("access", "Access", SiteSheets.ACCESS),
    LOADS("loads", "Critical loads", SiteSheets.LOADS),
    CLOSE("close", "Name and day", SiteSheets.CLOSE),
    DAY_ONE("day-one", "Shade on day one", SiteSheets.DAY_ONE);

    private final String path;
    private final String words;
    private final List<FieldGroup> groups;

    SurveyPart(String path, String words, List<FieldGroup> groups) {
        this.path = path;
        this.words = words;
        this.groups = groups;
    }

    /** The last word of its page's address. */
    public String path() {
        return path;
    }

    public String words() {
        return words;
    }

    List<FieldGroup> groups() {
        return groups;
    }

    List<SurveyField> fields() {
        return groups.stream().flatMap(group -> group.all().stream()).toList();
    }

    static Optional<SurveyPart> ofPath(String path) {
        return Arrays.stream(values()).filter(part -> part.path.equals(path)).findFirst();
    }

    /** The part that comes next on the walk; empty behind the last. */
    Optional<SurveyPart> next() {
        return this == CLOSE || this == DAY_ONE ? Optional.empty() : Optional.of(values()[ordinal() + 1]);
    }
}
