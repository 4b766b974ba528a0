package org.plumbrow.calc.finance.use;

import java.util.ArrayList;
import java.util.List;

/** One line of cells; a cell in double quotes may hold the separator. */
record TableRow(int line, char separator, List<String> cells) {

    static char separatorOf(String header) {
        if (header.indexOf('\t') >= 0) {
            return '\t';
        }
        return header.indexOf(';') >= 0 ? ';' : ',';
    }

    static TableRow of(int line, String text, char separator) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean inside = false;
        for (char each : text.toCharArray()) {
            if (each == '"') {
                inside = !inside;
            } else if (each == separator && !inside) {
                cells.add(cell.toString().trim());
                cell.setLength(0);
            } else {
                cell.append(each);
            }
        }
        cells.add(cell.toString().trim());
        return new TableRow(line, separator, cells);
    }

    String text(int at) {
        return at >= 0 && at < cells.size() ? cells.get(at) : "";
    }
}
