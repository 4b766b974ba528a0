package org.plumbrow.schedule.lookahead;

import java.util.List;

/**
 * Something that somebody must decide.
 *
 * @param shape of the status: trouble, risk
 * @param title what is wrong, with its figure
 * @param what why, one or two sentences; may be empty
 */
record Decision(String shape, String title, String what, List<Link> links) {

    /** @param here whether it leads to a place on this page */
    record Link(String words, String href) {}
}
