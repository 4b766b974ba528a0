package org.plumbrow.web;

/** Somebody must be signed in for this: a caller's bug where it reaches the log, as pages ask before. */
public final class NotSignedIn extends RuntimeException {

    public NotSignedIn() {
        super("nobody is signed in");
    }
}
