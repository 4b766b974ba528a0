package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.PvArray;
import org.plumbrow.design.PvString;

/** Which module belongs to which string, and the string to which input of which inverter. */
final class StringMap {

    private static final double ROW_WORDS = 48;
    private static final double WIDEST_CELL = 46;
    private static final double HEAD = 26;
    private static final double CELL = 23;
    private static final double BETWEEN_ROWS = 9;
    private static final String[] FILLS = {Canvas.PAPER, Canvas.SHADE, Canvas.TINT};

    private final Circuits circuits;
    private final PvArray array;
    private final List<PvString> strings;
    private final Map<Integer, PvString> byModule = new HashMap<>();

    StringMap(DesignFacts facts, PvArray array) {
        this.circuits = new Circuits(facts);
        this.array = array;
        this.strings = facts.strings().stream()
                .filter(string -> string.array().equals(array.mark()))
                .toList();
        for (PvString string : strings) {
            for (int i = 0; i < string.modules(); i++) {
                byModule.putIfAbsent(string.firstModule() + i, string);
            }
        }
    }

    List<Drawn> sheets() {
        if (array.rows() == 0) {
            return List.of();
        }
        List<Canvas> canvases = new ArrayList<>();
        double bottom = maps(canvases);
        Flow flow = new Flow(canvases.remove(canvases.size() - 1), Frame.LEFT, bottom + 8, Frame.RIGHT - Frame.LEFT);
        flow.table(key());
        canvases.addAll(flow.canvases());
        String says = "Each of the %d modules of %s with its string: %s."
                .formatted(array.modules(), array.mark(), Say.count(strings.size(), "string", "strings"));
        return Drawn.all(
                "string-map-" + Drawings.slug(array.mark()),
                "String map " + array.mark(),
                "M",
                Drawn.NOT_TO_SCALE,
                says,
                canvases);
    }

    /** Wide enough for its mark; wider where the row leaves room. */
    private double cellWidth() {
        return Math.min(WIDEST_CELL, room() / columns());
    }

    /** Of modules on one sheet. */
    private int columns() {
        double needed = strings.stream()
                .mapToDouble(string -> Letters.width(string.mark(), 8, true))
                .reduce(Letters.width("0000", 8, false), Math::max);
        int parts = (int) Math.ceil(most() / Math.floor(room() / (needed + 5)));
        return (int) Math.ceil((double) most() / parts);
    }

    private int most() {
        return array.modulesWide().stream().mapToInt(Integer::intValue).max().orElse(1);
    }

    private static double room() {
        return Frame.RIGHT - Frame.LEFT - ROW_WORDS;
    }

    /** Parts of the array, each as large as a sheet holds. @return lower edge of the last */
    private double maps(List<Canvas> canvases) {
        int columns = columns();
        double rowHeight = array.modulesHigh() * CELL + BETWEEN_ROWS;
        int rows = (int) Math.max(1, Math.floor((Frame.BOTTOM - Frame.TOP - HEAD) / rowHeight));
        double bottom = Frame.TOP;
        for (int row = 0; row < array.rows(); row += rows) {
            for (int column = 0; column < most(); column += columns) {
                Canvas canvas = new Canvas();
                bottom = new Part(canvas, column, column + columns, row, Math.min(array.rows(), row + rows)).draw();
                canvases.add(canvas);
            }
        }
        return bottom;
    }

    /** Rows and columns from 0, the last ones not included. */
    private final class Part {

        private final Canvas canvas;
        private final int fromColumn;
        private final int toColumn;
        private final int fromRow;
        private final int toRow;
        private final double width = cellWidth();

        Part(Canvas canvas, int fromColumn, int toColumn, int fromRow, int toRow) {
            this.canvas = canvas;
            this.fromColumn = fromColumn;
            this.toColumn = toColumn;
            this.fromRow = fromRow;
            this.toRow = toRow;
        }

        double draw() {
            canvas.quiet(Frame.LEFT, Frame.TOP + 9, 8.5, Anchor.START, words());
            new ArrayShape(array)
                    .spots().stream()
                            .filter(spot -> spot.row() >= fromRow && spot.row() < toRow)
                            .filter(spot -> spot.column() >= fromColumn && spot.column() < toColumn)
                            .forEach(this::cell);
            for (int row = fromRow; row < toRow; row++) {
                double middle = foot(row) - array.modulesHigh() * CELL / 2;
                canvas.text(Frame.LEFT + ROW_WORDS - 8, middle + 3, 8, Anchor.END, "Row " + (row + 1));
            }
            return foot(fromRow);
        }

        private String words() {
            String which = toColumn - fromColumn < most()
                    ? " Modules " + (fromColumn + 1) + " to " + Math.min(toColumn, most()) + " of each row."
                    : "";
            return "Each module with its string and its number, counted row by row from the lower left; row 1 is the front or the eave."
                    + which;
        }

        /** Lower edge; row 1 is the lowest. */
        private double foot(int row) {
            double rowHeight = array.modulesHigh() * CELL + BETWEEN_ROWS;
            return Frame.TOP + HEAD + (toRow - row) * rowHeight - BETWEEN_ROWS;
        }

        private void cell(ArrayShape.Spot spot) {
            double x = Frame.LEFT + ROW_WORDS + (spot.column() - fromColumn) * width;
            double y = foot(spot.row()) - (spot.line() + 1) * CELL;
            PvString string = byModule.get(spot.number());
            String fill = string == null ? Canvas.PAPER : FILLS[strings.indexOf(string) % FILLS.length];
            canvas.rect(x, y, width, CELL, Weight.THIN, fill);
            if (string == null) {
                canvas.line(x, y + CELL, x + width, y, Weight.HAIR);
                return;
            }
            canvas.bold(x + width / 2, y + 10, 8, Anchor.MIDDLE, string.mark());
            canvas.text(x + width / 2, y + 20, 8, Anchor.MIDDLE, String.valueOf(spot.number()));
        }
    }

    private Table key() {
        return new Table(
                "Strings",
                List.of(
                        "String",
                        "Inverter",
                        "Input",
                        "Modules",
                        "Their numbers",
                        "Voc cold",
                        "Isc",
                        "Combiner",
                        "Runs"),
                strings.stream().map(this::row).toList());
    }

    private List<String> row(PvString string) {
        int last = string.firstModule() + string.modules() - 1;
        return List.of(
                string.mark(),
                string.inverter(),
                String.valueOf(string.input()),
                String.valueOf(string.modules()),
                string.firstModule() + " to " + last + (last > array.modules() ? " (more than the array has)" : ""),
                Say.of(circuits.vocColdV(string), "V", 0),
                circuits.module(string)
                        .map(module -> Say.figure(module.iscA()) + " A")
                        .orElse(Say.UNKNOWN),
                string.combiner() == null ? "" : string.combiner(),
                String.join(", ", circuits.runsFrom(List.of(string.mark()))));
    }
}
