package org.plumbrow.schedule.lookahead;

import java.util.Optional;

/**
 * A piece of a row of the grid.
 *
 * @param span half-days
 * @param label what fits into the bar; empty for nothing
 * @param words the whole of it, for readers and as the title
 * @param href where a bar leads; too narrow a bar leads nowhere, its week is reached by the crew's name
 */
record Cell(int span, Kind kind, String label, String words, Optional<String> href) {

    enum Kind {
        EMPTY(""),
        JOB("job"),
        POWER_OFF("job job-off"),
        CLASH("job job-clash"),
        IDLE("idle"),
        AWAY("away"),
        CLOSED("closed");

        private final String styles;

        Kind(String styles) {
            this.styles = styles;
        }

        public String styles() {
            return styles;
        }
    }

    static Cell empty(int span) {
        return new Cell(span, Kind.EMPTY, "", "", Optional.empty());
    }
}
