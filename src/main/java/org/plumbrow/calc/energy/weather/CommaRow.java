package org.plumbrow.calc.energy.weather;

import java.util.ArrayList;
import java.util.List;

/**
 * One line of comma-separated cells; a cell in double quotes may hold commas.
 *
 * @param line its number, for what has to be said about it
 */
record CommaRow(int line, List<String> cells) {

    static CommaRow of(int line, String text) {
        return new CommaRow(line, text.indexOf('"') < 0 ? plain(text) : quoted(text));
    }

    private static List<String> plain(String text) {
        List<String> cells = new ArrayList<>(48);
        int from = 0;
        for (int comma = text.indexOf(','); comma >= 0; comma = text.indexOf(',', from)) {
            cells.add(text.substring(from, comma));
            from = comma + 1;
        }
        cells.add(text.substring(from));
        return cells;
    }

    private static List<String> quoted(String text) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean inside = false;
        for (char each : text.toCharArray()) {
            if (each == '"') {
                inside = !inside;
            } else if (each == ',' && !inside) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(each);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    int count() {
        return cells.size();
    }

    String text(int at) {
        return at < cells.size() ? cells.get(at).trim() : "";
    }

    double number(int at, String what) {
        String cell = text(at);
        try {
            double value = Double.parseDouble(cell);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // said below, in words
        }
        String read = cell.isEmpty() ? "is empty" : "reads \"%s\"".formatted(cell);
        throw new Unreadable(
                line, "%s (column %d) %s, a number is expected.".formatted(what, at + 1, read), "Bring a whole file.");
    }

    int whole(int at, String what) {
        double value = number(at, what);
        if (value != Math.rint(value)) {
            throw new Unreadable(
                    line,
                    "%s (column %d) reads \"%s\", a whole number is expected.".formatted(what, at + 1, text(at)),
                    "Bring a whole file.");
        }
        return (int) value;
    }
}
