package org.plumbrow.evidence.table;

import java.util.List;

/**
 * A table as it was read.
 *
 * @param encoding as people call it: "UTF-8", "Windows-1252"
 * @param separator between cells: comma, semicolon, tab or bar
 * @param header names of the columns, as written; an empty name becomes "column 3"
 * @param rows every row below the header that holds anything; each has exactly as many cells as the header
 */
public record UserTable(String encoding, char separator, List<String> header, List<Row> rows) {

    /** @param line of the file, from 1, where the row begins */
    public record Row(int line, List<String> cells) {}
}
