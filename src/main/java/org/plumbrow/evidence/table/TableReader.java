package org.plumbrow.evidence.table;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a delimited text file: finds out encoding and separator, takes the first row with two names or more as header. */
public final class TableReader {

    private static final char[] SEPARATORS = {',', ';', '\t', '|'};
    private static final int MOST_ROWS = 200_000;
    private static final int MOST_COLUMNS = 500;

    private TableReader() {}

    private record Decoded(String text, String encoding) {}

    /** @throws TableUnreadable if there is no header, no row, or quotes that never close */
    public static UserTable read(byte[] bytes) throws TableUnreadable {
        Decoded decoded = decode(bytes);
        if (decoded.text.isBlank()) {
            throw new TableUnreadable("The file is empty. Choose it again.");
        }
        char separator = separator(decoded.text);
        List<CSVRecord> records = records(decoded.text, separator);
        int head = headerRow(records);
        List<String> header = header(records.get(head));
        LineCount lines = new LineCount(decoded.text);
        List<UserTable.Row> rows = new ArrayList<>();
        for (CSVRecord each : records.subList(head + 1, records.size())) {
            rows.add(new UserTable.Row(lines.at(each), cells(each, header.size())));
        }
        if (rows.isEmpty()) {
            throw new TableUnreadable("The file has a heading but no row below it.");
        }
        return new UserTable(decoded.encoding, separator, header, List.copyOf(rows));
    }

    private static Decoded decode(byte[] bytes) {
        if (bytes.length >= 2 && bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE) {
            return new Decoded(withoutMark(new String(bytes, StandardCharsets.UTF_16LE)), "UTF-16");
        }
        if (bytes.length >= 2 && bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF) {
            return new Decoded(withoutMark(new String(bytes, StandardCharsets.UTF_16BE)), "UTF-16");
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return new Decoded(withoutMark(text), "UTF-8");
        } catch (CharacterCodingException older) {
            return new Decoded(new String(bytes, Charset.forName("windows-1252")), "Windows-1252");
        }
    }

    private static String withoutMark(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    /** The one that divides the first lines into most cells, and into equally many. */
    private static char separator(String text) {
        List<String> lines =
                text.lines().filter(line -> !line.isBlank()).limit(20).toList();
        char best = ',';
        double bestScore = -1;
        for (char candidate : SEPARATORS) {
            double score = score(lines, candidate);
            if (score > bestScore) {
                best = candidate;
                bestScore = score;
            }
        }
        return best;
    }

    private static double score(List<String> lines, char separator) {
        List<Integer> counts =
                lines.stream().map(line -> countOutsideQuotes(line, separator)).toList();
        int most = counts.stream().mapToInt(Integer::intValue).max().orElse(0);
        long alike = counts.stream().filter(count -> count == most).count();
        return most == 0 ? 0 : alike + Math.min(most, 50) / 100.0;
    }

    private static int countOutsideQuotes(String line, char separator) {
        int count = 0;
        boolean quoted = false;
        for (char each : line.toCharArray()) {
            quoted ^= each == '"';
            count += !quoted && each == separator ? 1 : 0;
        }
        return count;
    }

    private static List<CSVRecord> records(String text, char separator) throws TableUnreadable {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(false)
                .setLenientEof(false)
                .setTrailingData(true)
                .get();
        List<CSVRecord> kept = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord each : parser) {
                if (each.stream().anyMatch(cell -> !cell.isBlank())) {
                    kept.add(each);
                }
                if (kept.size() > MOST_ROWS) {
                    throw new TableUnreadable(
                            "The file has more than 200,000 rows. Split it and bring one part after the other.");
                }
            }
        } catch (UncheckedIOException | CSVException | IllegalStateException broken) {
            throw new TableUnreadable(brokenQuotes(kept, text));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return kept;
    }

    private static String brokenQuotes(List<CSVRecord> kept, String text) {
        int line = kept.isEmpty() ? 1 : new LineCount(text).at(kept.get(kept.size() - 1)) + 1;
        return "From line " + line
                + " on the file cannot be divided into cells: a quotation mark is opened and never closed."
                + " Correct it and bring the file again.";
    }

    private static int headerRow(List<CSVRecord> records) throws TableUnreadable {
        for (int i = 0; i < Math.min(records.size(), 20); i++) {
            long named = records.get(i).stream().filter(cell -> !cell.isBlank()).count();
            if (named >= 2) {
                if (records.get(i).size() > MOST_COLUMNS) {
                    throw new TableUnreadable("The file has more than 500 columns. Keep those that are needed.");
                }
                return i;
            }
        }
        throw new TableUnreadable("No heading was found: the first rows have fewer than two columns. "
                + "Save the sheet as CSV with the names of the columns in the first row.");
    }

    private static List<String> header(CSVRecord names) {
        List<String> header = new ArrayList<>();
        for (String name : names) {
            header.add(name.isBlank() ? "column " + (header.size() + 1) : name.strip());
        }
        return List.copyOf(header);
    }

    private static List<String> cells(CSVRecord row, int columns) {
        List<String> cells = new ArrayList<>(columns);
        for (int i = 0; i < columns; i++) {
            cells.add(i < row.size() ? row.get(i).strip() : "");
        }
        return List.copyOf(cells);
    }

    /** Counts on from one row to the next, so that a long file is counted once. */
    private static final class LineCount {
        private final String text;
        private int position;
        private int line = 1;

        LineCount(String text) {
            this.text = text;
        }

        int at(CSVRecord row) {
            int upTo = (int) Math.min(row.getCharacterPosition(), text.length());
            for (; position < upTo; position++) {
                line += text.charAt(position) == '\n' ? 1 : 0;
            }
            return line;
        }
    }
}
