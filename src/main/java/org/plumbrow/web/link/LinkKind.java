package org.plumbrow.web.link;

/** What a private link opens. */
public enum LinkKind {
    /** A crew's calendar: place and work, nothing of the customer. */
    CREW_FEED("/c/", ".ics"),
    /** The customer's page of one project. */
    CUSTOMER("/s/", ""),
    /** The label at the emergency shut-off. */
    SHUT_OFF("/f/", "");

    private final String before;
    private final String behind;

    LinkKind(String before, String behind) {
        this.before = before;
        this.behind = behind;
    }

    String path(String token) {
        return before + token + behind;
    }
}
