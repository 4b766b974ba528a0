package org.plumbrow.project;

/** Whether a project is being worked on; stands beside the stage. On hold and called off leave the plan and the default list. */
public enum Standing {
    OPEN("Open"),
    ON_HOLD("On hold"),
    CALLED_OFF("Called off");

    private final String words;

    Standing(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
