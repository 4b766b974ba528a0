package org.plumbrow.project.gate;

/** How an item stands. */
public enum ItemState {
    OPEN("todo", "Not started", false),
    PARTLY("part", "Under way", false),
    WAITING("wait", "Waiting", false),
    PROMISED("due", "Promised", false),
    /** A reading outside its limits is kept and waits for its explanation. */
    ASKED_ABOUT("risk", "Outside limits, to be explained", false),
    BROKEN("trouble", "Breaks", false),
    CANNOT_TELL("unknown", "Cannot tell yet", false),
    DONE("done", "Done", true),
    WAIVED("na", "Waived", true),
    NOT_APPLICABLE("na", "Does not apply", true);

    private final String shape;
    private final String words;
    private final boolean satisfied;

    ItemState(String shape, String words, boolean satisfied) {
        this.shape = shape;
        this.words = words;
        this.satisfied = satisfied;
    }

    /** Of the layout's status shapes. */
    public String shape() {
        return shape;
    }

    public String words() {
        return words;
    }

    public boolean isSatisfied() {
        return satisfied;
    }
}
