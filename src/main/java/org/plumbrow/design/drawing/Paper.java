package org.plumbrow.design.drawing;

import java.awt.Shape;
import org.jspecify.annotations.Nullable;

/** What a canvas is drawn on; lengths in points from the upper left corner, colours as "#1a2028" or {@link Canvas#NONE}. */
interface Paper {

    void line(double x1, double y1, double x2, double y2, Pen pen);

    /** @param round radius of the corners @param pen null without an edge */
    void rect(double x, double y, double width, double height, double round, String fill, @Nullable Pen pen);

    void circle(double x, double y, double radius, String fill, Pen pen);

    void path(Shape shape, String fill, Pen pen);

    /** The feet of the letters stand at y. */
    void words(double x, double y, double size, Anchor anchor, boolean bold, String colour, String words);

    /** One word in the middle of the sheet, slanting upwards. */
    void watermark(double x, double y, double size, double slantDeg, String colour, String word);
}
