package org.plumbrow.notice;

/** How far a notice has come. */
public enum NoticeState {
    WAITING("waiting to be sent", "wait"),
    SENT("sent", "done"),
    NOT_SENT("not sent", "trouble"),
    BY_HAND("passed on", "done"),
    WITHDRAWN("withdrawn before it was sent", "na");

    private final String words;
    private final String shape;

    NoticeState(String words, String shape) {
        this.words = words;
        this.shape = shape;
    }

    public String words() {
        return words;
    }

    /** Name of the shape that stands before the words on a page. */
    public String shape() {
        return shape;
    }
}
