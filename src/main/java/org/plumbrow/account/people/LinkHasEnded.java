package org.plumbrow.account.people;

/** A link that lets somebody sign in was used, has ended, or never was: all are answered alike, with 404. */
final class LinkHasEnded extends RuntimeException {

    LinkHasEnded() {
        super("unknown, used or ended");
    }
}
