package org.plumbrow.design.drawing;

/**
 * A round scale at which a width and a height fit.
 *
 * @param feetPerInch on the printed sheet
 */
record PlanScale(int feetPerInch) {

    private static final double POINTS_PER_INCH = 72;
    private static final int[] ROUND = {
        1, 2, 3, 4, 5, 6, 8, 10, 15, 20, 30, 40, 50, 60, 80, 100, 150, 200, 300, 400, 500
    };

    static PlanScale fitting(double widthFt, double heightFt, double width, double height) {
        for (int feet : ROUND) {
            PlanScale scale = new PlanScale(feet);
            if (widthFt * scale.points() <= width && heightFt * scale.points() <= height) {
                return scale;
            }
        }
        double needed = Math.max(widthFt / width, heightFt / height) * POINTS_PER_INCH;
        return new PlanScale((int) (Math.ceil(needed / 100) * 100));
    }

    /** To a foot. */
    double points() {
        return POINTS_PER_INCH / feetPerInch;
    }

    String words() {
        return "1 in = " + feetPerInch + " ft at 17 × 11 in";
    }

    /** A bar of two inches, with its figures. */
    void bar(Canvas canvas, double x, double y) {
        for (int i = 0; i < 4; i++) {
            String fill = i % 2 == 0 ? Canvas.INK : Canvas.PAPER;
            canvas.rect(x + i * POINTS_PER_INCH / 2, y, POINTS_PER_INCH / 2, 5, Weight.THIN, fill);
        }
        canvas.text(x, y + 15, 8, Anchor.MIDDLE, "0");
        canvas.text(x + POINTS_PER_INCH, y + 15, 8, Anchor.MIDDLE, String.valueOf(feetPerInch));
        canvas.text(x + 2 * POINTS_PER_INCH, y + 15, 8, Anchor.MIDDLE, 2 * feetPerInch + " ft");
    }
}
