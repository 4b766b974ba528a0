package org.plumbrow.design.drawing;

import java.awt.geom.Arc2D;
import java.awt.geom.Path2D;

/** Signs of the one-line, in the manner of IEEE 315 and IEC 60617; each is drawn about its middle. */
final class Symbols {

    private final Canvas canvas;

    Symbols(Canvas canvas) {
        this.canvas = canvas;
    }

    /** Modules in series: cells with the arrowhead of a source; the wire leaves at x + 74. */
    void moduleString(double x, double y) {
        for (int i = 0; i < 3; i++) {
            double left = x + i * 22 + (i == 2 ? 8 : 0);
            canvas.rect(left, y - 8, 16, 16, Weight.LINE, Canvas.PAPER);
            canvas.polyline(Weight.THIN, left, y - 8, left + 8, y - 1, left + 16, y - 8);
        }
        canvas.line(x + 16, y, x + 22, y, Weight.LINE);
        for (int i = 0; i < 3; i++) {
            canvas.circle(x + 41.5 + i * 3.5, y, 0.6, Weight.THIN, Canvas.INK);
        }
    }

    /** Direct current in, alternating current out. */
    void inverter(double x, double y) {
        canvas.rect(x - 24, y - 16, 48, 32, Weight.LINE, Canvas.PAPER);
        canvas.line(x - 24, y + 16, x + 24, y - 16, Weight.THIN);
        canvas.line(x - 18, y - 8, x - 6, y - 8, Weight.THIN);
        canvas.dashed(x - 18, y - 4.5, x - 6, y - 4.5, Weight.THIN);
        canvas.path(wave(x + 6, y + 7), Weight.LINE, Canvas.NONE);
    }

    private static Path2D wave(double x, double y) {
        Path2D wave = new Path2D.Double();
        wave.moveTo(x, y);
        wave.curveTo(x + 2, y - 6, x + 4, y - 6, x + 6, y);
        wave.curveTo(x + 8, y + 6, x + 10, y + 6, x + 12, y);
        return wave;
    }

    /** A fuse: a box with the wire through it. */
    void fuse(double x, double y) {
        canvas.rect(x - 9, y - 4, 18, 8, Weight.LINE, Canvas.PAPER);
        canvas.line(x - 9, y, x + 9, y, Weight.THIN);
    }

    void combiner(double x, double y, boolean fused) {
        canvas.rect(x - 22, y - 15, 44, 30, Weight.LINE, Canvas.PAPER);
        canvas.line(x + 14, y - 11, x + 14, y + 11, Weight.HEAVY);
        for (int i = -1; i <= 1; i++) {
            canvas.line(x - 22, y + 7.5 * i, x + 14, y + 7.5 * i, Weight.THIN);
            if (fused) {
                canvas.rect(x - 11, y + 7.5 * i - 2.4, 14, 4.8, Weight.THIN, Canvas.PAPER);
                canvas.line(x - 11, y + 7.5 * i, x + 3, y + 7.5 * i, Weight.THIN);
            }
        }
    }

    /** A circuit breaker: two contacts under an arc. */
    void breaker(double x, double y) {
        canvas.cover(x - 12, y - 3, 24, 6);
        canvas.path(new Arc2D.Double(x - 10, y - 12.5, 20, 20, 0, 180, Arc2D.OPEN), Weight.LINE, Canvas.NONE);
        canvas.circle(x - 12, y, 2, Weight.THIN, Canvas.PAPER);
        canvas.circle(x + 12, y, 2, Weight.THIN, Canvas.PAPER);
    }

    /** A breaker in a wire that runs down the sheet. */
    void standingBreaker(double x, double y) {
        canvas.cover(x - 3, y - 12, 6, 24);
        canvas.path(new Arc2D.Double(x - 12.5, y - 10, 20, 20, 90, 180, Arc2D.OPEN), Weight.LINE, Canvas.NONE);
        canvas.circle(x, y - 12, 2, Weight.THIN, Canvas.PAPER);
        canvas.circle(x, y + 12, 2, Weight.THIN, Canvas.PAPER);
    }

    /** An open blade in its box; with a fuse behind it where it has one. */
    void disconnect(double x, double y, boolean fused) {
        canvas.rect(x - 26, y - 15, 52, 24, Weight.LINE, Canvas.PAPER);
        canvas.line(x - 26, y, x - 16, y, Weight.LINE);
        canvas.circle(x - 14, y, 2, Weight.THIN, Canvas.PAPER);
        canvas.line(x - 12.5, y - 1, x + 1, y - 10, Weight.LINE);
        canvas.circle(x + 3, y, 2, Weight.THIN, Canvas.PAPER);
        canvas.line(x + 5, y, x + 26, y, Weight.LINE);
        if (fused) {
            fuse(x + 15, y);
        }
    }

    /** Wires in on the left meet a bar. */
    void panel(double x, double y) {
        canvas.rect(x - 22, y - 17, 44, 34, Weight.LINE, Canvas.PAPER);
        canvas.line(x, y - 12, x, y + 12, Weight.HEAVY);
        canvas.line(x - 22, y, x, y, Weight.LINE);
        canvas.line(x, y, x + 22, y, Weight.LINE);
    }

    void meter(double x, double y) {
        lettered(x, y, "M");
    }

    void generator(double x, double y) {
        lettered(x, y, "G");
    }

    private void lettered(double x, double y, String letter) {
        canvas.circle(x, y, 13, Weight.LINE, Canvas.PAPER);
        canvas.bold(x, y + 4, 11, Anchor.MIDDLE, letter);
    }

    /** Two windings, one below the other. */
    void transformer(double x, double y) {
        canvas.circle(x, y - 7, 11, Weight.LINE, Canvas.NONE);
        canvas.circle(x, y + 7, 11, Weight.LINE, Canvas.NONE);
    }

    /** Three bars that grow shorter; the wire comes from above. */
    void ground(double x, double y) {
        for (int i = 0; i < 3; i++) {
            double half = 9 - 3 * i;
            canvas.line(x - half, y + 3.5 * i, x + half, y + 3.5 * i, i == 0 ? Weight.LINE : Weight.THIN);
        }
    }

    /** One blade, two sources: the service from above, the generator from the left. */
    void transferSwitch(double x, double y) {
        canvas.rect(x - 20, y - 16, 40, 32, Weight.LINE, Canvas.PAPER);
        canvas.circle(x, y - 10, 2, Weight.THIN, Canvas.PAPER);
        canvas.circle(x - 12, y, 2, Weight.THIN, Canvas.PAPER);
        canvas.circle(x, y + 10, 2, Weight.THIN, Canvas.PAPER);
        canvas.line(x, y + 8, x, y - 8, Weight.LINE);
        canvas.line(x, y - 16, x, y - 12, Weight.LINE);
        canvas.line(x, y + 12, x, y + 16, Weight.LINE);
        canvas.line(x - 20, y, x - 14, y, Weight.LINE);
    }

    /** A generator left of a switch, joined to it. */
    void generatorBeside(double right, double y) {
        canvas.line(right - 10, y, right, y, Weight.LINE);
        generator(right - 23, y);
    }

    /** A busbar. */
    void bar(double left, double right, double y) {
        canvas.line(left, y, right, y, Weight.HEAVY);
    }

    /** A ground led off to the left of a wire that runs down. */
    void sideGround(double x, double y) {
        canvas.polyline(Weight.THIN, x, y - 6, x - 26, y - 6, x - 26, y + 2);
        joint(x, y - 6);
        ground(x - 26, y + 2);
    }

    /** A run's mark on its wire. */
    void balloon(double x, double y, String mark) {
        double width = Letters.width(mark, 8, true) + 9;
        canvas.rounded(x - width / 2, y - 6.5, width, 13);
        canvas.bold(x, y + 2.9, 8, Anchor.MIDDLE, mark);
    }

    void arrowUp(double x, double y) {
        canvas.polygon(Weight.THIN, Canvas.INK, x, y, x - 4, y + 9, x + 4, y + 9);
    }

    void arrowDown(double x, double y) {
        canvas.polygon(Weight.THIN, Canvas.INK, x, y, x - 4, y - 9, x + 4, y - 9);
    }

    void joint(double x, double y) {
        canvas.circle(x, y, 2.6, Weight.THIN, Canvas.INK);
    }
}
