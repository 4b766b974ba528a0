package org.plumbrow.calc.duration;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The rows a new branch starts with, as they lie in {@code productivity/*.csv}; no field there holds a comma. */
public final class ShippedTable {

    private ShippedTable() {}

    public static DurationTables all() {
        return new DurationTables(rates(), fixedTimes(), waits());
    }

    public static List<WorkRate> rates() {
        return rows("work-rates").stream().map(ShippedTable::rate).toList();
    }

    public static List<FixedTime> fixedTimes() {
        return rows("fixed-times").stream()
                .map(cell -> new FixedTime(cell[0], cell[1], spread(cell, 2), Integer.parseInt(cell[5])))
                .toList();
    }

    public static List<WaitTime> waits() {
        return rows("waits").stream()
                .map(cell -> new WaitTime(
                        cell[0],
                        cell[1],
                        WaitTime.DayKind.valueOf(cell[2]),
                        spread(cell, 3),
                        Double.parseDouble(cell[6]),
                        WaitTime.Shape.valueOf(cell[7]),
                        cell[8]))
                .toList();
    }

    private static WorkRate rate(String[] cell) {
        String[] crew = cell[6].split("-");
        return new WorkRate(
                cell[0],
                cell[1],
                cell[2],
                middle(cell[3]),
                middle(cell[4]),
                middle(cell[5]),
                Integer.parseInt(crew[0]),
                Integer.parseInt(crew[crew.length - 1]),
                equipment(cell[7]),
                Double.parseDouble(cell[8]),
                WorkRate.Pace.valueOf(cell[9]),
                cell[10]);
    }

    /** A range in a cell counts as its middle. */
    static double middle(String cell) {
        String[] ends = cell.split("-");
        return (Double.parseDouble(ends[0]) + Double.parseDouble(ends[ends.length - 1])) / 2;
    }

    private static Spread spread(String[] cell, int first) {
        return new Spread(
                Double.parseDouble(cell[first]),
                Double.parseDouble(cell[first + 1]),
                Double.parseDouble(cell[first + 2]));
    }

    private static Map<EquipmentKind, Integer> equipment(String cell) {
        Map<EquipmentKind, Integer> kinds = new EnumMap<>(EquipmentKind.class);
        for (String part : cell.isEmpty() ? new String[0] : cell.split(";")) {
            String[] words = part.split(" x");
            kinds.put(EquipmentKind.valueOf(words[0]), words.length == 1 ? 1 : Integer.parseInt(words[1]));
        }
        return kinds;
    }

    private static List<String[]> rows(String table) {
        String name = "/productivity/" + table + ".csv";
        try (InputStream file = Objects.requireNonNull(ShippedTable.class.getResourceAsStream(name), name);
                BufferedReader lines = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
