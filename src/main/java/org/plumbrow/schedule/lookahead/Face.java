package org.plumbrow.schedule.lookahead;

import java.util.Optional;

/**
 * What a piece of a row shows.
 *
 * @param label what fits into the bar; empty for nothing
 * @param words the whole of it, for readers and as the title
 * @param href where a bar leads; too narrow a bar leads nowhere, its week is reached by the crew's name
 * @param shape of the status beside the label; empty for none
 * @param settled whether its start was settled by hand
 * @param movable whether it can be taken hold of and moved
 */
record Face(String label, String words, Optional<String> href, String shape, boolean settled, boolean movable) {

    static final Face NONE = of("", "", Optional.empty());

    static Face of(String label, String words, Optional<String> href) {
        return new Face(label, words, href, "", false, false);
    }

    Face bookedTwice() {
        return new Face(label, words + ", booked twice", href, shape.isEmpty() ? "" : "trouble", settled, movable);
    }
}
