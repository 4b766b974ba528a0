package org.plumbrow.design.drawing;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.PathIterator;
import java.awt.geom.RoundRectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import org.jspecify.annotations.Nullable;
import org.plumbrow.evidence.pdf.Typeface;

/** A sheet drawn on a page of a PDF: lines as lines, words as words. A page's own zero is its lower left corner. */
final class Pdf implements Paper {

    private final PDPageContentStream page;
    private final Typeface plain;
    private final Typeface bold;

    Pdf(PDPageContentStream page, Typeface plain, Typeface bold) {
        this.page = page;
        this.plain = plain;
        this.bold = bold;
    }

    /** Something written on the page. */
    private interface Writing {
        void write() throws IOException;
    }

    private static void write(Writing writing) {
        try {
            writing.write();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, Pen pen) {
        path(new Line2D.Double(x1, y1, x2, y2), Canvas.NONE, pen);
    }

    @Override
    public void rect(double x, double y, double width, double height, double round, String fill, @Nullable Pen pen) {
        Shape box = round > 0
                ? new RoundRectangle2D.Double(x, y, width, height, 2 * round, 2 * round)
                : new java.awt.geom.Rectangle2D.Double(x, y, width, height);
        draw(box, fill, pen);
    }

    @Override
    public void circle(double x, double y, double radius, String fill, Pen pen) {
        draw(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius), fill, pen);
    }

    @Override
    public void path(Shape shape, String fill, Pen pen) {
        draw(shape, fill, pen);
    }

    private void draw(Shape shape, String fill, @Nullable Pen pen) {
        boolean filled = !fill.equals(Canvas.NONE);
        write(() -> {
            if (filled) {
                page.setNonStrokingColor(Color.decode(fill));
            }
            if (pen != null) {
                page.setStrokingColor(Color.decode(Canvas.INK));
                page.setLineWidth((float) pen.weight().points());
                page.setLineDashPattern(pen.isDashed() ? new float[] {pen.dash(), pen.gap()} : new float[0], 0);
            }
            trace(shape);
            if (filled && pen != null) {
                page.fillAndStroke();
            } else if (filled) {
                page.fill();
            } else {
                page.stroke();
            }
        });
    }

    private void trace(Shape shape) throws IOException {
        float[] at = new float[6];
        for (PathIterator way = shape.getPathIterator(null); !way.isDone(); way.next()) {
            switch (way.currentSegment(at)) {
                case PathIterator.SEG_MOVETO -> page.moveTo(at[0], up(at[1]));
                case PathIterator.SEG_LINETO -> page.lineTo(at[0], up(at[1]));
                case PathIterator.SEG_CUBICTO -> page.curveTo(at[0], up(at[1]), at[2], up(at[3]), at[4], up(at[5]));
                case PathIterator.SEG_CLOSE -> page.closePath();
                default -> throw new IllegalArgumentException("no such curve on a sheet");
            }
        }
    }

    private static float up(double y) {
        return (float) (Frame.HEIGHT - y);
    }

    @Override
    public void words(double x, double y, double size, Anchor anchor, boolean heavy, String colour, String words) {
        words(Matrix.getTranslateInstance((float) x, up(y)), size, anchor, heavy, colour, words);
    }

    @Override
    public void watermark(double x, double y, double size, double slantDeg, String colour, String word) {
        Matrix turned = Matrix.getRotateInstance(Math.toRadians(slantDeg), (float) x, up(y));
        words(turned, size, Anchor.MIDDLE, true, colour, word);
    }

    private void words(Matrix at, double size, Anchor anchor, boolean heavy, String colour, String words) {
        Typeface typeface = heavy ? bold : plain;
        String writable = typeface.writable(words);
        write(() -> {
            at.translate((float) (-anchor.share() * typeface.width(writable, size)), 0);
            page.beginText();
            page.setFont(typeface.font(), (float) size);
            page.setNonStrokingColor(Color.decode(colour));
            page.setTextMatrix(at);
            page.showText(writable);
            page.endText();
        });
    }
}
