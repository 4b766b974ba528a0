package org.plumbrow.schedule.lookahead;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lays pieces of time into rows of cells. Bars that overlap go into a row of their own, marked as booked twice; idle
 * times, absences and closed days fill what the bars of the first row leave free.
 */
final class Lanes {

    /** A piece of time with a place from..to (to not included). */
    record Piece(int from, int to, Cell.Kind kind, Face face) {

        Piece asClash() {
            return new Piece(from, to, Cell.Kind.CLASH, face.bookedTwice());
        }

        private Cell cell(int span) {
            return new Cell(span, kind, face);
        }
    }

    private final int width;
    private final List<@Nullable Piece[]> lanes = new ArrayList<>();

    private Lanes(int width) {
        this.width = width;
        lanes.add(new Piece[width]);
    }

    /**
     * @param bars what is booked
     * @param background what shows where nothing is booked; earlier ones win
     */
    static List<List<Cell>> of(int width, List<Piece> bars, List<Piece> background) {
        Lanes rows = new Lanes(width);
        bars.stream()
                .filter(bar -> bar.from < bar.to)
                .sorted(Comparator.comparingInt(Piece::from).thenComparingInt(Piece::to))
                .forEach(rows::place);
        background.forEach(rows::fill);
        return rows.lanes.stream().map(rows::cells).toList();
    }

    private void place(Piece bar) {
        for (int lane = 0; ; lane++) {
            if (lane == lanes.size()) {
                lanes.add(new Piece[width]);
            }
            @Nullable Piece[] row = lanes.get(lane);
            if (Arrays.stream(row, bar.from, bar.to).allMatch(taken -> taken == null)) {
                Arrays.fill(row, bar.from, bar.to, lane == 0 ? bar : bar.asClash());
                return;
            }
        }
    }

    private void fill(Piece piece) {
        @Nullable Piece[] row = lanes.get(0);
        for (int place = piece.from; place < piece.to; place++) {
            if (row[place] == null) {
                row[place] = piece;
            }
        }
    }

    @SuppressWarnings("ReferenceEquality") // the very same piece, not one like it
    private List<Cell> cells(@Nullable Piece[] row) {
        List<Cell> cells = new ArrayList<>();
        int from = 0;
        for (int place = 1; place <= width; place++) {
            if (place == width || row[place] != row[from]) {
                Piece piece = row[from];
                cells.add(piece == null ? Cell.empty(place - from) : piece.cell(place - from));
                from = place;
            }
        }
        return cells;
    }
}
