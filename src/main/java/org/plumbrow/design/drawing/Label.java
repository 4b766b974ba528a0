package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.List;

/** Words beside a symbol: a bold head and lines below it, broken to a width. Its height is known before it is drawn. */
record Label(String head, List<String> lines, double width) {

    private static final double SIZE = 8;
    private static final double HEAD = 9;

    Label {
        lines = List.copyOf(lines);
    }

    private List<String> heads() {
        return head.isBlank() ? List.of() : Letters.wrap(head, width, HEAD, true);
    }

    private List<String> wrapped() {
        List<String> wrapped = new ArrayList<>();
        lines.stream()
                .filter(line -> !line.isBlank())
                .forEach(line -> wrapped.addAll(Letters.wrap(line, width, SIZE, false)));
        return wrapped;
    }

    double height() {
        return heads().size() * HEAD * Letters.LEADING + wrapped().size() * SIZE * Letters.LEADING;
    }

    /** @param top upper edge of the block */
    void draw(Canvas canvas, double x, double top, Anchor anchor) {
        double feet = top + HEAD * 0.8;
        for (String line : heads()) {
            canvas.bold(x, feet, HEAD, anchor, line);
            feet += HEAD * Letters.LEADING;
        }
        canvas.lines(x, feet, SIZE, anchor, wrapped());
    }
}
