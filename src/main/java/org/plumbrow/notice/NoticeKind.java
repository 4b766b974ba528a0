package org.plumbrow.notice;

/** To whom a notice goes, which decides who may read it in the outbox. */
public enum NoticeKind {
    /** Lets somebody sign in: seen by the firm's owner only, its text goes once it was used. */
    SIGN_IN("sign-in"),
    STAFF("staff"),
    CUSTOMER("customer"),
    UTILITY("utility");

    private final String words;

    NoticeKind(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
