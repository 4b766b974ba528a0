package org.plumbrow.web;

/** A private link was opened too often, or somebody guessed too often: answered with 429. */
public final class TooManyVisits extends RuntimeException {

    public TooManyVisits() {
        super("too many visits of a private link");
    }
}
