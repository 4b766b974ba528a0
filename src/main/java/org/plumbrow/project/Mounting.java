package org.plumbrow.project;

/** How an array is held up; decides the work, the gate items and the durations. */
public enum Mounting {
    GROUND_MOUNT("ground mount"),
    FLAT_ROOF("flat roof"),
    PITCHED_ROOF("pitched roof");

    private final String words;

    Mounting(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
