package org.plumbrow.schedule.lookahead;

/** A piece of a row of the grid. @param span half-days */
record Cell(int span, Kind kind, Face face) {

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
        return new Cell(span, Kind.EMPTY, Face.NONE);
    }

    public boolean isEmpty() {
        return kind == Kind.EMPTY;
    }

    /** Whether it is work that is booked. */
    public boolean isBar() {
        return kind == Kind.JOB || kind == Kind.POWER_OFF || kind == Kind.CLASH;
    }

    public String styles() {
        return kind.styles + (face.settled() ? " job-settled" : "");
    }
}
