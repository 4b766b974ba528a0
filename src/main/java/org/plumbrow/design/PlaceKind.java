package org.plumbrow.design;

/** What stands on the site plan. */
public enum PlaceKind {
    THING("array, inverter or device"),
    ROUTE("way of a run"),
    BOUNDARY("boundary"),
    SETBACK("line to keep clear of"),
    FENCE("fence"),
    LANE("lane or access"),
    BURIED_LINE("buried line that is there"),
    OVERHEAD_LINE("line overhead"),
    BUILDING("building"),
    TREES("trees or other shade"),
    CONTOUR("contour");

    private final String words;

    PlaceKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Whether its first and last point are joined. */
    public boolean isArea() {
        return this == BUILDING || this == TREES;
    }
}
