package org.plumbrow.project;

/** A date worth promising, in the order in which they usually come. */
public enum Milestone {
    SURVEY_DONE("survey done"),
    DESIGN_APPROVED("design approved"),
    PERMITS_IN_HAND("permits in hand"),
    INTERCONNECTION_AGREED("interconnection agreed"),
    WORK_BEGUN("work begun on site"),
    DISCONNECT_SET("disconnect set"),
    ARRAY_BUILT("array built"),
    ELECTRICAL_DONE("electrical work done"),
    INSPECTION_PASSED("inspection passed"),
    CUTOVER_DONE("cutover done"),
    PERMISSION_TO_OPERATE("permission to operate"),
    SYSTEM_ON("system on"),
    HAND_OVER("hand-over");

    private final String words;

    Milestone(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
