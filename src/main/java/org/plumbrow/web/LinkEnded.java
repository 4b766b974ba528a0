package org.plumbrow.web;

/** A private link that is unknown, ended or revoked: all three are the same page, with 404. */
public final class LinkEnded extends RuntimeException {

    public LinkEnded() {
        super("no live private link");
    }
}
