package org.plumbrow.cutover;

/** Where an outage window stands. */
public enum OutageState {
    /** A day is held, nobody outside knows of it. */
    PROPOSED("held, nobody told"),
    BOOKED("booked, notice not complete"),
    NOTICE_GIVEN("notice given"),
    DONE("done"),
    CANCELLED("cancelled"),
    MOVED("moved");

    private final String words;

    OutageState(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Whether the outage is still to come. */
    public boolean isLive() {
        return this == PROPOSED || this == BOOKED || this == NOTICE_GIVEN;
    }

    /** Whether somebody outside the house may have been told. */
    public boolean isAnnounced() {
        return this == BOOKED || this == NOTICE_GIVEN;
    }
}
