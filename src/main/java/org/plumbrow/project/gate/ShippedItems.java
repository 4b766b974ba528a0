package org.plumbrow.project.gate;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.Duty;

/** The checklists that every branch begins with: {@code gates/items.csv}, a file that people can read. */
final class ShippedItems {

    private static final CSVFormat FORMAT = CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .get();

    private static final List<AskedItem> ALL = read();

    private ShippedItems() {}

    /** In the order of the gates and of their items. */
    static List<AskedItem> all() {
        return ALL;
    }

    private static List<AskedItem> read() {
        try (Reader file = new InputStreamReader(
                        Objects.requireNonNull(ShippedItems.class.getResourceAsStream("/gates/items.csv")),
                        StandardCharsets.UTF_8);
                CSVParser rows = FORMAT.parse(file)) {
            return rows.stream().map(ShippedItems::item).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static AskedItem item(CSVRecord row) {
        return new AskedItem(
                row.get("code"),
                row.get("words"),
                row.get("hint"),
                AnswerKind.read(row.get("kinds")),
                row.get("unit"),
                figure(row.get("low")),
                figure(row.get("high")),
                Integer.parseInt(row.get("least")),
                Condition.read(row.get("condition"), row.get("asked_where")),
                row.get("required").equals("yes"),
                row.get("safety").equals("yes"),
                Duty.valueOf(row.get("duty").toUpperCase(Locale.ROOT)));
    }

    private static @Nullable BigDecimal figure(String written) {
        return written.isEmpty() ? null : new BigDecimal(written);
    }
}
