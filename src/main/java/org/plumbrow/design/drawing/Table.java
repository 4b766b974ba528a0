package org.plumbrow.design.drawing;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Rows under heads, ruled: as wide as its words need, at most as wide as its place. */
record Table(String caption, List<String> heads, List<List<String>> rows) {

    static final double SIZE = 8;
    static final double CAPTION = 16;

    private static final double PAD = 10;
    private static final double LINE = SIZE * Letters.LEADING;
    private static final double ROW_EXTRA = 4;
    private static final double NARROWEST = 34;

    Table {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
    }

    /** The same head over other rows. */
    Table with(List<List<String>> others, String otherCaption) {
        return new Table(otherCaption, heads, others);
    }

    /** Widths of the columns: what they need, the widest narrowed first where the place is too small. */
    double[] widths(double place) {
        double[] widths =
                IntStream.range(0, heads.size()).mapToDouble(this::needed).toArray();
        while (Arrays.stream(widths).sum() > place) {
            int widest = IntStream.range(0, widths.length)
                    .reduce((a, b) -> widths[a] >= widths[b] ? a : b)
                    .orElseThrow();
            if (widths[widest] <= NARROWEST) {
                break;
            }
            widths[widest] -= Math.max(1, Math.min(6, Arrays.stream(widths).sum() - place));
        }
        return spread(widths, place);
    }

    private static double[] spread(double[] widths, double place) {
        double sum = Arrays.stream(widths).sum();
        double more = Math.min(place - sum, 0.3 * sum) / widths.length;
        return more <= 0
                ? widths
                : Arrays.stream(widths).map(width -> width + more).toArray();
    }

    private double needed(int column) {
        double head = Letters.width(heads.get(column), SIZE, true);
        return PAD
                + 1
                + rows.stream()
                        .mapToDouble(row -> Letters.width(row.get(column), SIZE, false))
                        .reduce(head, Math::max);
    }

    double headHeight(double[] widths) {
        return CAPTION + height(heads, widths, true);
    }

    double rowHeight(int row, double[] widths) {
        return height(rows.get(row), widths, false);
    }

    private static double height(List<String> cells, double[] widths, boolean bold) {
        int most = IntStream.range(0, cells.size())
                .map(i ->
                        Letters.wrap(cells.get(i), widths[i] - PAD, SIZE, bold).size())
                .max()
                .orElse(1);
        return most * LINE + ROW_EXTRA;
    }

    double height(double place) {
        double[] widths = widths(place);
        return headHeight(widths)
                + IntStream.range(0, rows.size())
                        .mapToDouble(row -> rowHeight(row, widths))
                        .sum();
    }

    /** @return lower edge */
    double draw(Canvas canvas, double x, double top, double[] widths) {
        canvas.bold(x, top + 11, 10, Anchor.START, caption);
        double y = top + CAPTION;
        double right = x + Arrays.stream(widths).sum();
        y = drawRow(canvas, heads, x, y, widths, true);
        canvas.line(x, y, right, y, Weight.LINE);
        for (List<String> row : rows) {
            y = drawRow(canvas, row, x, y, widths, false);
            canvas.line(x, y, right, y, Weight.HAIR);
        }
        return y;
    }

    private static double drawRow(
            Canvas canvas, List<String> cells, double x, double top, double[] widths, boolean bold) {
        double left = x;
        for (int i = 0; i < cells.size(); i++) {
            double feet = top + SIZE + 2;
            for (String line : Letters.wrap(cells.get(i), widths[i] - PAD, SIZE, bold)) {
                if (bold) {
                    canvas.bold(left, feet, SIZE, Anchor.START, line);
                } else {
                    canvas.text(left, feet, SIZE, Anchor.START, line);
                }
                feet += LINE;
            }
            left += widths[i];
        }
        return top + height(cells, widths, bold);
    }
}
