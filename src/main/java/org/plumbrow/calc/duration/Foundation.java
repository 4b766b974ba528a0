package org.plumbrow.calc.duration;

/** What carries an array on the ground; roofs have ballast or attachments, which need no choice. */
public enum Foundation {
    DRIVEN_POSTS("driven posts", "driven-posts"),
    DRIVEN_POSTS_TWO_DRIVERS("driven posts, two drivers", "driven-posts-two-drivers"),
    GROUND_SCREWS("ground screws", "ground-screws"),
    CONCRETE_PIERS("concrete piers", "concrete-piers");

    /** Days after which a pier may be loaded: the middle of 3 to 7, common practice. */
    private static final int CURING_DAYS = 5;

    private final String words;
    private final String rate;

    Foundation(String words, String rate) {
        this.words = words;
        this.rate = rate;
    }

    public String words() {
        return words;
    }

    String rate() {
        return rate;
    }

    int curingCalendarDays() {
        return this == CONCRETE_PIERS ? CURING_DAYS : 0;
    }
}
