package org.plumbrow.design.drawing;

import java.util.List;

/** What is drawn on one sheet, written as SVG with attributes only; lengths in points from the upper left corner. */
final class Canvas {

    static final String INK = "#1a2028";
    static final String SECOND = "#4a525b";
    static final String PAPER = "#ffffff";
    static final String TINT = "#eef0f1";
    static final String SHADE = "#d9dde0";
    static final String NONE = "none";

    private final StringBuilder svg = new StringBuilder();

    String svg() {
        return svg.toString();
    }

    static String number(double value) {
        long hundredths = Math.round(value * 100);
        if (hundredths % 100 == 0) {
            return Long.toString(hundredths / 100);
        }
        long whole = Math.abs(hundredths) / 100;
        long part = Math.abs(hundredths) % 100;
        String digits = part % 10 == 0 ? Long.toString(part / 10) : (part < 10 ? "0" : "") + part;
        return (hundredths < 0 ? "-" : "") + whole + "." + digits;
    }

    static String escaped(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replaceAll("[\\x00-\\x08\\x0b\\x0c\\x0e-\\x1f\\ufffe\\uffff]", " ");
    }

    private static String pen(Weight weight) {
        return " stroke=\"" + INK + "\" stroke-width=\"" + number(weight.points()) + "\"";
    }

    void line(double x1, double y1, double x2, double y2, Weight weight) {
        line(x1, y1, x2, y2, pen(weight));
    }

    void dashed(double x1, double y1, double x2, double y2, Weight weight) {
        line(x1, y1, x2, y2, pen(weight) + " stroke-dasharray=\"6 3\"");
    }

    private void line(double x1, double y1, double x2, double y2, String pen) {
        svg.append("<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\"%s/>\n"
                .formatted(number(x1), number(y1), number(x2), number(y2), pen));
    }

    void rect(double x, double y, double width, double height, Weight weight, String fill) {
        rect(x, y, width, height, pen(weight), fill);
    }

    /** Covers what lies beneath, edge and all. */
    void cover(double x, double y, double width, double height) {
        rect(x, y, width, height, "", PAPER);
    }

    /** With round ends. */
    void rounded(double x, double y, double width, double height) {
        rect(x, y, width, height, " rx=\"" + number(height / 2) + "\"" + pen(Weight.THIN), PAPER);
    }

    void dashedRect(double x, double y, double width, double height, Weight weight) {
        rect(x, y, width, height, pen(weight) + " stroke-dasharray=\"8 4\"", NONE);
    }

    private void rect(double x, double y, double width, double height, String pen, String fill) {
        svg.append("<rect x=\"").append(number(x)).append("\" y=\"").append(number(y));
        svg.append("\" width=\"").append(number(width)).append("\" height=\"").append(number(height));
        svg.append("\" fill=\"").append(fill).append('"').append(pen).append("/>\n");
    }

    void circle(double x, double y, double radius, Weight weight, String fill) {
        svg.append("<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"%s\"%s/>\n"
                .formatted(number(x), number(y), number(radius), fill, pen(weight)));
    }

    /** Points joined by straight lines: x1, y1, x2, y2, ... */
    void polyline(Weight weight, double... points) {
        path(joined(points), weight, NONE);
    }

    void polygon(Weight weight, String fill, double... points) {
        path(joined(points) + "Z", weight, fill);
    }

    private static String joined(double... points) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < points.length; i += 2) {
            path.append(i == 0 ? "M" : "L")
                    .append(number(points[i]))
                    .append(' ')
                    .append(number(points[i + 1]));
        }
        return path.toString();
    }

    void path(String path, Weight weight, String fill) {
        svg.append("<path d=\"%s\" fill=\"%s\"%s/>\n".formatted(path, fill, pen(weight)));
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
        if (words.isBlank()) {
            return;
        }
        svg.append("<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\"%s fill=\"%s\">%s</text>\n"
                .formatted(
                        number(x),
                        number(y),
                        number(size),
                        anchor.word(),
                        bold ? " font-weight=\"bold\"" : "",
                        colour,
                        escaped(words)));
    }

    /** One word across the sheet, behind everything, so light that all is read through it. */
    void watermark(double x, double y, double size, String word) {
        svg.append(
                "<text class=\"watermark\" x=\"%1$s\" y=\"%2$s\" font-size=\"%3$s\" text-anchor=\"middle\" font-weight=\"bold\" fill=\"#f1f2f3\" transform=\"rotate(-24 %1$s %2$s)\">%4$s</text>\n"
                        .formatted(number(x), number(y), number(size), escaped(word)));
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
        svg.append(other.svg);
    }
}
