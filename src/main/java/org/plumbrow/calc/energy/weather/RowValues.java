package org.plumbrow.calc.energy.weather;

/** Puts one row's readings in their places: a missing code becomes NaN, an impossible value ends the reading. */
final class RowValues {

    private final int line;
    private final double[] values = new double[Column.COUNT];

    RowValues(int line) {
        this.line = line;
        java.util.Arrays.fill(values, Double.NaN);
    }

    /** @param missing whether the file's own code for "missing" stands there */
    RowValues with(Column column, double value, boolean missing) {
        if (!missing && !column.range().holds(value)) {
            var range = column.range();
            throw new Unreadable(
                    line,
                    "%s %s lies outside %,.0f to %,.0f %s."
                            .formatted(
                                    column.words(), NumberWords.of(value), range.least(), range.most(), range.unit()),
                    "Check the unit and the columns of the file.");
        }
        values[column.ordinal()] = missing ? Double.NaN : value;
        return this;
    }

    double[] all() {
        return values;
    }
}
