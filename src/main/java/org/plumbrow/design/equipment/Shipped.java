package org.plumbrow.design.equipment;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.plumbrow.design.part.Cells;

/** The generic entries that come with the program, read once. */
final class Shipped {

    private static final Map<EquipmentKind, List<Entry>> ALL = Map.of(
            EquipmentKind.MODULE, read(EquipmentKind.MODULE), EquipmentKind.INVERTER, read(EquipmentKind.INVERTER));

    private Shipped() {}

    static List<Entry> of(EquipmentKind kind) {
        return ALL.getOrDefault(kind, List.of());
    }

    private static List<Entry> read(EquipmentKind kind) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .get();
        String file = "/equipment/" + kind.slug() + ".csv";
        try (Reader reader = new InputStreamReader(Shipped.class.getResourceAsStream(file), StandardCharsets.UTF_8)) {
            return format.parse(reader).stream()
                    .map(row -> new Entry(null, kind, new Cells(row.toMap()), 0, false))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
