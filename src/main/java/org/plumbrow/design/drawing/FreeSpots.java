package org.plumbrow.design.drawing;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts labels beside points where no other label stands; what finds no place stays in the tables. */
final class FreeSpots {

    private static final double SIZE = 8;
    private static final double ABOVE = 0.8 * SIZE;
    private static final double HEIGHT = 1.08 * SIZE;
    private static final int RINGS = 9;
    private static final double STEP = 12;
    private static final double[][] SIDES = {{1, 0}, {0, -1}, {-1, 0}, {0, 1}, {1, -1}, {-1, -1}, {1, 1}, {-1, 1}};

    private final Canvas canvas;
    private final Rectangle2D paper;
    private final List<Rectangle2D> taken = new ArrayList<>();

    FreeSpots(Canvas canvas, double left, double top, double right, double bottom) {
        this.canvas = canvas;
        this.paper = new Rectangle2D.Double(left, top, right - left, bottom - top);
    }

    /** Nothing is written upon a sign of this half width. */
    void keepFree(double x, double y, double half) {
        taken.add(new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half));
    }

    void bold(double x, double y, String words) {
        place(x, y, words, true);
    }

    void plain(double x, double y, String words) {
        place(x, y, words, false);
    }

    private void place(double x, double y, String words, boolean bold) {
        double width = Letters.width(words, SIZE, bold);
        free(x, y, width).ifPresent(box -> {
            taken.add(box);
            canvas.cover(box.getX() - 1, box.getY(), box.getWidth() + 2, box.getHeight());
            double feet = box.getY() + ABOVE;
            if (bold) {
                canvas.bold(box.getX(), feet, SIZE, Anchor.START, words);
            } else {
                canvas.text(box.getX(), feet, SIZE, Anchor.START, words);
            }
        });
    }

    private Optional<Rectangle2D> free(double x, double y, double width) {
        for (int ring = 1; ring <= RINGS; ring++) {
            for (double[] side : SIDES) {
                double middleX = x + side[0] * (width / 2 + ring * STEP);
                double middleY = y + side[1] * ring * STEP;
                Rectangle2D box = new Rectangle2D.Double(middleX - width / 2, middleY - HEIGHT / 2, width, HEIGHT);
                if (paper.contains(box) && taken.stream().noneMatch(box::intersects)) {
                    return Optional.of(box);
                }
            }
        }
        return Optional.empty();
    }
}
