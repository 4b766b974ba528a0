package org.plumbrow.design.drawing;

/** How thick a line is: the more it carries, the thicker. Points. */
enum Weight {
    /** Dimensions, rows of tables. */
    HAIR(0.4),
    /** Inside of symbols, modules. */
    THIN(0.7),
    /** Conductors, outlines of things. */
    LINE(1.1),
    /** Busbars, ground, what is cut, the frame. */
    HEAVY(2.2);

    private final double points;

    Weight(double points) {
        this.points = points;
    }

    double points() {
        return points;
    }
}
