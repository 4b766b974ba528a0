package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.List;

/** Tables and notes below one another, on as many sheets as they need. */
final class Flow {

    private static final double BETWEEN = 14;

    private final List<Canvas> canvases = new ArrayList<>();
    private double left;
    private double width;
    private double y;

    Flow(Canvas first, double left, double top, double width) {
        canvases.add(first);
        this.left = left;
        this.width = width;
        this.y = top;
    }

    static Flow onNewSheet() {
        return new Flow(new Canvas(), Frame.LEFT, Frame.TOP, Frame.RIGHT - Frame.LEFT);
    }

    List<Canvas> canvases() {
        return List.copyOf(canvases);
    }

    double y() {
        return y;
    }

    private Canvas canvas() {
        return canvases.get(canvases.size() - 1);
    }

    private void next() {
        canvases.add(new Canvas());
        y = Frame.TOP;
        left = Frame.LEFT;
        width = Frame.RIGHT - Frame.LEFT;
    }

    /** Whole where it fits on one sheet; else its rows go on under the same head. */
    void table(Table table) {
        if (table.rows().isEmpty()) {
            return;
        }
        double whole = table.height(width);
        if (y + whole > Frame.BOTTOM && y > Frame.TOP && whole <= Frame.BOTTOM - Frame.TOP) {
            next();
        }
        int from = 0;
        while (from < table.rows().size()) {
            int to = fits(table, table.widths(width), from);
            String caption = from == 0 ? table.caption() : table.caption() + ", continued";
            y = table.with(table.rows().subList(from, to), caption).draw(canvas(), left, y, table.widths(width))
                    + BETWEEN;
            from = to;
            if (from < table.rows().size()) {
                next();
            }
        }
    }

    /** The row after the last one that still fits here; at least one row on a new sheet. */
    private int fits(Table table, double[] widths, int from) {
        double end = y + table.headHeight(widths);
        int to = from;
        while (to < table.rows().size() && end + table.rowHeight(to, widths) <= Frame.BOTTOM) {
            end += table.rowHeight(to, widths);
            to++;
        }
        if (to == from && y > Frame.TOP) {
            next();
            return fits(table, table.widths(width), from);
        }
        return Math.max(to, from + 1);
    }

    /** Numbered sentences under a head. */
    void notes(String caption, List<String> sentences) {
        List<List<String>> lines = new ArrayList<>();
        for (int i = 0; i < sentences.size(); i++) {
            lines.add(Letters.wrap((i + 1) + ". " + sentences.get(i), Math.min(width, 700), Table.SIZE, false));
        }
        double height = Table.CAPTION + lines.stream().mapToInt(List::size).sum() * Table.SIZE * Letters.LEADING + 6;
        if (y + height > Frame.BOTTOM && y > Frame.TOP) {
            next();
        }
        canvas().bold(left, y + 11, 10, Anchor.START, caption);
        double feet = y + Table.CAPTION + Table.SIZE;
        for (List<String> sentence : lines) {
            feet = canvas().lines(left, feet, Table.SIZE, Anchor.START, sentence);
        }
        y = feet + BETWEEN;
    }
}
