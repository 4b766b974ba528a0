package org.plumbrow.evidence.table;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Writes a table that spreadsheet programs open as it is: UTF-8 with its mark, and no cell that such a program would
 * run as a formula (a cell that begins with = + − @ or a tab gets an apostrophe before it).
 */
public final class SpreadsheetCsv {

    private SpreadsheetCsv() {}

    public static byte[] write(List<String> header, Iterable<List<String>> rows) {
        StringWriter text = new StringWriter();
        text.write('\uFEFF');
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord(header.stream().map(SpreadsheetCsv::plain).toList());
            for (List<String> row : rows) {
                printer.printRecord(row.stream().map(SpreadsheetCsv::plain).toList());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** The cell as text, never as a formula. A negative number stays a number. */
    public static String plain(String cell) {
        if (cell.isEmpty() || "=+-−@\t\r".indexOf(cell.charAt(0)) < 0 || cell.matches("[-−]\\d+(\\.\\d+)?")) {
            return cell;
        }
        return "'" + cell;
    }
}
