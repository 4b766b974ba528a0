package org.plumbrow.calc.duration;

import java.util.Locale;

/** The activities of a project, in the order of the work. */
public enum ActivityCode {
    SURVEY("site survey", Kind.DESK),
    DESIGN("design", Kind.DESK),
    GROUND_TEST("ground test", Kind.WAIT),
    STRUCTURAL_LETTER("structural letter", Kind.WAIT),
    PERMIT("permit", Kind.WAIT),
    ZONING("zoning", Kind.WAIT),
    INTERCONNECTION("interconnection approval", Kind.WAIT),
    AGREEMENT("interconnection agreement", Kind.WAIT),
    LOCATE("locate of buried lines", Kind.WAIT),
    RACKING_DELIVERY("racking on site", Kind.WAIT),
    MODULES_DELIVERY("modules on site", Kind.WAIT),
    INVERTERS_DELIVERY("inverters on site", Kind.WAIT),
    GEAR_DELIVERY("AC gear on site", Kind.WAIT),
    SITE_START("mobilising and staking", Kind.CREW),
    FOUNDATION("posts", Kind.CREW),
    RACKING("racking", Kind.CREW),
    MODULES("modules", Kind.CREW),
    DC_WIRING("DC wiring", Kind.CREW),
    TRENCH("trench", Kind.CREW),
    BORE("bore", Kind.CREW),
    INVERTERS("inverters", Kind.CREW),
    AC_GEAR("AC gear", Kind.CREW),
    CONDUCTORS("AC conductors", Kind.CREW),
    ELECTRICAL_FINISH("terminations, labels and string tests", Kind.CREW),
    FENCE("fence", Kind.CREW),
    SITE_FINISH("clean-up and leaving", Kind.CREW),
    SERVICE_INSPECTION("inspection of the service side", Kind.WAIT),
    INSPECTION("electrical inspection", Kind.WAIT),
    CUTOVER_APPOINTMENT("utility's appointment", Kind.WAIT),
    CUTOVER("cutover", Kind.CREW),
    PERMISSION("meter and permission to operate", Kind.WAIT),
    COMMISSIONING("commissioning", Kind.CREW),
    HAND_OVER("hand-over", Kind.DESK);

    /** Who does it: a crew, somebody at a desk or alone on site, or somebody we wait for. */
    public enum Kind {
        CREW,
        DESK,
        WAIT
    }

    private final String words;
    private final Kind kind;

    ActivityCode(String words, Kind kind) {
        this.words = words;
        this.kind = kind;
    }

    public String words() {
        return words;
    }

    public Kind kind() {
        return kind;
    }

    /** As in "ac-gear"; lasting, so it may be stored. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Of the n-th array of a project: the first has no number, so that a second one does not rename it. */
    String key(int array) {
        return array == 0 ? key() : key() + "-" + (array + 1);
    }
}
