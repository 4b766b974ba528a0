package org.plumbrow.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;

/**
 * A table as it leaves the house (RFC 4180, UTF-8): a cell that a spreadsheet would take for a formula gets an
 * apostrophe before it, unless it is a plain number.
 */
public final class Csv {

    private final Appendable out;

    private Csv(Appendable out) {
        this.out = out;
    }

    /** Starts the table with its heads. */
    public static Csv to(Appendable out, String... heads) {
        Csv table = new Csv(out);
        table.row(List.of(heads));
        return table;
    }

    /** The headers of a download by this name; the name is ours, without folders. */
    public static HttpHeaders headers(String fileName) {
        HttpHeaders headers = new HttpHeaders();
        headers.add(HttpHeaders.CONTENT_TYPE, "text/csv; charset=utf-8");
        headers.setContentDisposition(ContentDisposition.attachment()
                .filename(fileName, StandardCharsets.UTF_8)
                .build());
        headers.setCacheControl("no-store");
        return headers;
    }

    public Csv row(List<String> cells) {
        try {
            for (int i = 0; i < cells.size(); i++) {
                out.append(i == 0 ? "" : ",").append(cell(cells.get(i)));
            }
            out.append("\r\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    static String cell(String text) {
        String harmless = startsAFormula(text) ? "'" + text : text;
        boolean quoted = harmless.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return quoted ? '"' + harmless.replace("\"", "\"\"") + '"' : harmless;
    }

    private static boolean startsAFormula(String text) {
        return !text.isEmpty() && "=+-−@\t\r".indexOf(text.charAt(0)) >= 0 && !text.matches("-?\\d+(\\.\\d+)?");
    }
}
