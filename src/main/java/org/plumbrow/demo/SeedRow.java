package org.plumbrow.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A row of a seed file, its cells by the name of their column. */
record SeedRow(String file, Map<String, String> cells) {

    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreSurroundingSpaces(true)
            .get();

    static List<SeedRow> of(String file) {
        try (InputStream in = SeedRow.class.getResourceAsStream("/demo-seed/" + file)) {
            if (in == null) {
                throw new IllegalStateException("demo-seed/" + file + " is missing");
            }
            try (CSVParser parser = CSVParser.parse(new InputStreamReader(in, StandardCharsets.UTF_8), FORMAT)) {
                return parser.stream()
                        .map(CSVRecord::toMap)
                        .map(cells -> new SeedRow(file, cells))
                        .toList();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String text(String column) {
        String cell = cells.get(column);
        if (cell == null) {
            throw new IllegalStateException(file + " has no column " + column);
        }
        return cell;
    }

    boolean has(String column) {
        return !text(column).isEmpty();
    }

    boolean yes(String column) {
        return text(column).equals("yes");
    }

    int whole(String column) {
        return Integer.parseInt(text(column));
    }

    BigDecimal figure(String column) {
        return new BigDecimal(text(column));
    }

    Optional<Integer> maybe(String column) {
        return has(column) ? Optional.of(whole(column)) : Optional.empty();
    }

    /** The parts of a cell that holds several. */
    List<String> parts(String column, String separator) {
        return has(column)
                ? List.of(text(column).split("\\s*" + java.util.regex.Pattern.quote(separator) + "\\s*"))
                : List.of();
    }
}
