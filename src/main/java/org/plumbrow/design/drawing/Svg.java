package org.plumbrow.design.drawing;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import org.jspecify.annotations.Nullable;

/** A sheet written as SVG, with attributes only. */
final class Svg implements Paper {

    private static final String COMMANDS = "MLQCZ";
    private static final int[] POINTS = {1, 1, 2, 3, 0};

    private final StringBuilder svg = new StringBuilder();

    /** The whole document of a sheet. @param caption its title @param says what it shows, for those who do not see it */
    static String of(Canvas canvas, String caption, String says) {
        Svg paper = new Svg();
        canvas.on(paper);
        return """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1224 792" width="1224" height="792" role="img" \
                font-family="'DejaVu Sans', Verdana, sans-serif">
                <title>%s</title>
                <desc>%s</desc>
                <rect x="0" y="0" width="1224" height="792" fill="#ffffff"/>
                %s</svg>
                """.formatted(escaped(caption), escaped(says), paper.svg);
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

    private static String stroke(@Nullable Pen pen) {
        if (pen == null) {
            return "";
        }
        String dashes = pen.isDashed() ? " stroke-dasharray=\"" + pen.dash() + " " + pen.gap() + "\"" : "";
        return " stroke=\"" + Canvas.INK + "\" stroke-width=\""
                + number(pen.weight().points()) + "\"" + dashes;
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, Pen pen) {
        svg.append("<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\"%s/>\n"
                .formatted(number(x1), number(y1), number(x2), number(y2), stroke(pen)));
    }

    @Override
    public void rect(double x, double y, double width, double height, double round, String fill, @Nullable Pen pen) {
        svg.append("<rect x=\"").append(number(x)).append("\" y=\"").append(number(y));
        svg.append("\" width=\"").append(number(width)).append("\" height=\"").append(number(height));
        svg.append(round > 0 ? "\" rx=\"" + number(round) : "").append("\" fill=\"");
        svg.append(fill).append('"').append(stroke(pen)).append("/>\n");
    }

    @Override
    public void circle(double x, double y, double radius, String fill, Pen pen) {
        svg.append("<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"%s\"%s/>\n"
                .formatted(number(x), number(y), number(radius), fill, stroke(pen)));
    }

    @Override
    public void path(Shape shape, String fill, Pen pen) {
        svg.append("<path d=\"%s\" fill=\"%s\"%s/>\n".formatted(written(shape), fill, stroke(pen)));
    }

    private static String written(Shape shape) {
        StringBuilder path = new StringBuilder();
        double[] at = new double[6];
        for (PathIterator way = shape.getPathIterator(null); !way.isDone(); way.next()) {
            int kind = way.currentSegment(at);
            path.append(COMMANDS.charAt(kind));
            for (int i = 0; i < 2 * POINTS[kind]; i++) {
                path.append(i == 0 ? "" : " ").append(number(at[i]));
            }
        }
        return path.toString();
    }

    @Override
    public void words(double x, double y, double size, Anchor anchor, boolean bold, String colour, String words) {
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

    @Override
    public void watermark(double x, double y, double size, double slantDeg, String colour, String word) {
        svg.append(
                "<text class=\"watermark\" x=\"%1$s\" y=\"%2$s\" font-size=\"%3$s\" text-anchor=\"middle\" font-weight=\"bold\" fill=\"%4$s\" transform=\"rotate(%5$s %1$s %2$s)\">%6$s</text>\n"
                        .formatted(number(x), number(y), number(size), colour, number(-slantDeg), escaped(word)));
    }
}
