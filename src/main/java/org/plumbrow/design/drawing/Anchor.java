package org.plumbrow.design.drawing;

/** Which part of a text stands at its point. */
enum Anchor {
    START("start", 0),
    MIDDLE("middle", 0.5),
    END("end", 1);

    private final String word;
    private final double share;

    Anchor(String word, double share) {
        this.word = word;
        this.share = share;
    }

    String word() {
        return word;
    }

    /** Share of the width that lies left of the point. */
    double share() {
        return share;
    }
}
