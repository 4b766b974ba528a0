package org.plumbrow.web;

/** There is no such thing, or it is another branch's: both are answered alike, with 404. */
public final class NotFound extends RuntimeException {

    public NotFound() {
        super("not there for this person");
    }

    public NotFound(String what) {
        super(what + " is not there for this person");
    }
}
