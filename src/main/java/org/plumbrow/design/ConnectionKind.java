package org.plumbrow.design;

/** How the array meets the service. */
public enum ConnectionKind {
    /** At the end of the busbar away from the main. */
    BREAKER_AT_FAR_END("breaker at the far end of the bus"),
    BREAKER_ANYWHERE("breaker anywhere on the bus"),
    BY_SUM_OF_DEVICES("breaker on the bus, by the sum of all devices"),
    CENTER_FED_PANEL("breaker at one end of a center-fed panel"),
    /** The utility's outage is the cutover. */
    SUPPLY_SIDE_TAP("tap ahead of the main");

    private final String words;

    ConnectionKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
