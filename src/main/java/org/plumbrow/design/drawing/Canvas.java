package org.plumbrow.design.drawing;

import java.awt.Shape;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** What is drawn on one sheet, in the order in which it covers one another; lengths in points from the upper left corner. */
final class Canvas {

    static final String INK = "#1a2028";
    static final String SECOND = "#4a525b";
    static final String PAPER = "#ffffff";
    static final String TINT = "#eef0f1";
    static final String SHADE = "#d9dde0";
    static final String NONE = "none";

    private static final String WATERMARK = "#e9ebed";
    private static final double SLANT = 24;

    private final List<Consumer<Paper>> marks = new ArrayList<>();

    void on(Paper paper) {
        marks.forEach(mark -> mark.accept(paper));
    }

    void line(double x1, double y1, double x2, double y2, Weight weight) {
        marks.add(paper -> paper.line(x1, y1, x2, y2, new Pen(weight)));
    }

    void dashed(double x1, double y1, double x2, double y2, Weight weight) {
        marks.add(paper -> paper.line(x1, y1, x2, y2, new Pen(weight, 6, 3)));
    }

    void rect(double x, double y, double width, double height, Weight weight, String fill) {
        marks.add(paper -> paper.rect(x, y, width, height, 0, fill, new Pen(weight)));
    }

    /** Covers what lies beneath, edge and all. */
    void cover(double x, double y, double width, double height) {
        marks.add(paper -> paper.rect(x, y, width, height, 0, PAPER, null));
    }

    /** With round ends. */
    void rounded(double x, double y, double width, double height) {
        marks.add(paper -> paper.rect(x, y, width, height, height / 2, PAPER, new Pen(Weight.THIN)));
    }

    void dashedRect(double x, double y, double width, double height, Weight weight) {
        marks.add(paper -> paper.rect(x, y, width, height, 0, NONE, new Pen(weight, 8, 4)));
    }

    void circle(double x, double y, double radius, Weight weight, String fill) {
        marks.add(paper -> paper.circle(x, y, radius, fill, new Pen(weight)));
    }

    /** Points joined by straight lines: x1, y1, x2, y2, ... */
    void polyline(Weight weight, double... points) {
        path(joined(points), weight, NONE);
    }

    void polygon(Weight weight, String fill, double... points) {
        Path2D path = joined(points);
        path.closePath();
        path(path, weight, fill);
    }

    private static Path2D joined(double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            path.lineTo(points[i], points[i + 1]);
        }
        return path;
    }

    void path(Shape shape, Weight weight, String fill) {
        marks.add(paper -> paper.path(shape, fill, new Pen(weight)));
    }

    void dashedPath(Shape shape, Weight weight) {
        marks.add(paper -> paper.path(shape, NONE, new Pen(weight, 6, 3)));
    }

    void text(double x, double y, double size, Anchor anchor, String words) {
        text(x, y, size, anchor, false, INK, words);
    }

    void bold(double x, double y, double size, Anchor anchor, String words) {
        text(x, y, size, anchor, true, INK, words);
    }

    void quiet(double x, double y, double size, Anchor anchor, String words) {
        text(x, y, size, anchor, false, SECOND, words);
    }

    private void text(double x, double y, double size, Anchor anchor, boolean bold, String colour, String words) {
        if (!words.isBlank()) {
            marks.add(paper -> paper.words(x, y, size, anchor, bold, colour, words));
        }
    }

    /** One word across the sheet, behind everything, so light that all is read through it. */
    void watermark(double x, double y, double size, String word) {
        marks.add(paper -> paper.watermark(x, y, size, SLANT, WATERMARK, word));
    }

    /** Lines below one another, the first line's feet at y. @return feet of the line that would follow */
    double lines(double x, double y, double size, Anchor anchor, List<String> lines) {
        double feet = y;
        for (String line : lines) {
            text(x, feet, size, anchor, line);
            feet += size * Letters.LEADING;
        }
        return feet;
    }

    void add(Canvas other) {
        marks.addAll(other.marks);
    }
}
