package org.plumbrow.design.drawing;

/**
 * How a line is drawn.
 *
 * @param dash length of a dash, points; 0 for a line without gaps
 * @param gap between two dashes
 */
record Pen(Weight weight, int dash, int gap) {

    Pen(Weight weight) {
        this(weight, 0, 0);
    }

    boolean isDashed() {
        return dash > 0;
    }
}
