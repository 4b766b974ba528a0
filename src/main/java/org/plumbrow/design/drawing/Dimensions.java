package org.plumbrow.design.drawing;

/** Dimension lines with their ticks; the figure stands beside the line and is never crossed by one. */
final class Dimensions {

    private static final double TICK = 3;
    private static final double SIZE = 8;

    private final Canvas canvas;

    Dimensions(Canvas canvas) {
        this.canvas = canvas;
    }

    /** The figure below the line, in its middle. */
    void along(double x1, double x2, double y, String figure) {
        canvas.line(x1, y, x2, y, Weight.HAIR);
        tick(x1, y);
        tick(x2, y);
        canvas.text((x1 + x2) / 2, y + SIZE + 3, SIZE, Anchor.MIDDLE, figure);
    }

    /** The figure right of the line, in its middle. @return right edge of the figure */
    double up(double x, double y1, double y2, String figure) {
        upright(x, y1, y2);
        canvas.text(x + 6, (y1 + y2) / 2 + 3, SIZE, Anchor.START, figure);
        return x + 6 + Letters.width(figure, SIZE, false);
    }

    /** The figure left of the line. */
    void upAtLeft(double x, double y1, double y2, String figure) {
        upright(x, y1, y2);
        canvas.text(x - 6, (y1 + y2) / 2 + 3, SIZE, Anchor.END, figure);
    }

    private void upright(double x, double y1, double y2) {
        canvas.line(x, y1, x, y2, Weight.HAIR);
        tick(x, y1);
        tick(x, y2);
    }

    private void tick(double x, double y) {
        canvas.line(x - TICK, y + TICK, x + TICK, y - TICK, Weight.THIN);
    }

    /** From a thing to its dimension line. */
    void lead(double x1, double y1, double x2, double y2) {
        canvas.line(x1, y1, x2, y2, Weight.HAIR);
    }
}
