package org.plumbrow.crew;

/** Why a crew or a machine is not there. */
public enum AwayReason {
    TRAINING("training"),
    HOLIDAY("holiday"),
    ILLNESS("illness"),
    REPAIR("repair"),
    LENT_OUT("lent out"),
    OTHER("other");

    private final String words;

    AwayReason(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
