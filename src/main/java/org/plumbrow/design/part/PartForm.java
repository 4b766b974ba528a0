package org.plumbrow.design.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.calendar.ClockWords;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Option;
import org.springframework.validation.Errors;

/** Rows of fields as typed; every field is said once by its {@link Col}. Bound by path: {@code rows[0].cells[size]}. */
public class PartForm {

    /** What a row carries that shall go. */
    private static final String TAKEN_OUT = "out";

    /** Fields of a row that stand in its line. */
    private static final int SHOWN = 6;

    private final List<Row> rows = new ArrayList<>();
    private final Map<String, String> sent = new LinkedHashMap<>();

    /** One row as typed. */
    public static class Row {
        private final Map<String, String> cells = new LinkedHashMap<>();

        public Map<String, String> getCells() {
            return cells;
        }
    }

    /** The first fields of a row in words, without its mark; what was typed stands as it is. */
    public static String summary(Row row, List<Col> cols, Offers offers) {
        return cols.stream()
                .filter(col -> !col.name().equals("mark"))
                .filter(col -> !Entered.text(row.cells.get(col.name())).isEmpty())
                .limit(SHOWN)
                .map(col -> words(col, Entered.text(row.cells.get(col.name())), offers))
                .collect(java.util.stream.Collectors.joining(", "));
    }

    public List<Row> getRows() {
        return rows;
    }

    /** What the form carries beside its rows: {@code sent[version]}. */
    public Map<String, String> getSent() {
        return sent;
    }

    /** The form of what is kept, its fields in the order of the columns; a list ends with one blank row. */
    public static PartForm of(List<Cells> kept, List<Col> cols, boolean repeated, long version) {
        PartForm form = new PartForm();
        kept.forEach(cells -> form.add(cells, cols));
        if (repeated || kept.isEmpty()) {
            form.add(Cells.none(), cols);
        }
        form.sent.put("version", Long.toString(version));
        return form;
    }

    private void add(Cells cells, List<Col> cols) {
        Row row = new Row();
        cols.forEach(col -> row.cells.put(col.name(), cells.text(col.name())));
        rows.add(row);
    }

    /** The version as the form carried it; one that no thing has where it did not. */
    public long version() {
        return Entered.version(sent.get("version"));
    }

    /** What a column's name offers to choose from. */
    public interface Offers {
        List<Option> of(Col col);
    }

    /** Reads what was typed, row by row without the blank ones; what cannot be read is said at its field. */
    public List<Cells> read(List<Col> cols, Offers offers, Errors errors) {
        List<Cells> read = new ArrayList<>();
        for (int at = 0; at < rows.size(); at++) {
            Cells cells = typed(rows.get(at), cols);
            if (cells.isBlank() || "yes".equals(rows.get(at).cells.get(TAKEN_OUT))) {
                continue;
            }
            for (Col col : cols) {
                String field = "rows[%d].cells[%s]".formatted(at, col.name());
                col.wrong(cells.text(col.name()), offers.of(col))
                        .ifPresent(sentence -> errors.rejectValue(field, "refused", sentence));
            }
            read.add(cells);
        }
        return read;
    }

    private static Cells typed(Row row, List<Col> cols) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (Col col : cols) {
            String typed = row.cells.get(col.name());
            cells.put(col.name(), typed == null ? "" : typed.strip());
        }
        return new Cells(cells);
    }

    /** Every field as it stands written, for the page that lays theirs beside yours. */
    public static List<Written> written(List<Cells> rows, List<Col> cols, Offers offers) {
        List<Written> written = new ArrayList<>();
        for (int at = 0; at < rows.size(); at++) {
            String which = rows.size() > 1 ? " (" + name(rows.get(at), at) + ")" : "";
            for (Col col : cols) {
                String value = rows.get(at).text(col.name());
                written.add(Written.of(
                        col.label() + which,
                        "rows[%d].cells[%s]".formatted(at, col.name()),
                        value,
                        words(col, value, offers)));
            }
        }
        return written;
    }

    private static String name(Cells row, int at) {
        return row.isEmpty("mark") ? "row " + (at + 1) : row.text("mark");
    }

    /** As people read it: a choice by its words, a figure with its unit. */
    public static String words(Col col, String value, Offers offers) {
        if (value.isEmpty()) {
            return "\u2013";
        }
        return offers.of(col).stream()
                .filter(option -> option.value().equals(value))
                .map(Option::words)
                .findFirst()
                .orElseGet(() -> typed(col, value));
    }

    private static String typed(Col col, String value) {
        return switch (col.written()) {
            case DATE -> Cells.day(value).map(DayWords::withYear).orElse(value);
            case TIME -> Cells.clock(value).map(ClockWords::of).orElse(value);
            case WORDS, SPOTS -> (value + " " + col.unit()).strip();
        };
    }
}
