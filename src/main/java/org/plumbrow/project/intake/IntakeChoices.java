package org.plumbrow.project.intake;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.evidence.table.Cells.DateOrder;

/**
 * How a file is understood: which column holds what, and what the file does not say itself.
 *
 * @param columns field → column of the file, from 0; a field that no column holds is absent
 * @param unsaidMounting what an array stands on where the row does not say it
 */
record IntakeChoices(Map<IntakeField, Integer> columns, SizeUnit sizeUnit, DateOrder dateOrder, Unsaid unsaidMounting) {

    enum SizeUnit {
        KILOWATTS("kilowatts (kW)"),
        WATTS("watts (W)");

        private final String words;

        SizeUnit(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    enum Unsaid {
        PITCHED_ROOF("a pitched roof", Mounting.PITCHED_ROOF),
        FLAT_ROOF("a flat roof", Mounting.FLAT_ROOF),
        GROUND("the ground", Mounting.GROUND),
        LEAVE_OPEN("nothing: leave the array open", null);

        private final String words;
        private final @org.jspecify.annotations.Nullable Mounting mounting;

        Unsaid(String words, @org.jspecify.annotations.Nullable Mounting mounting) {
            this.words = words;
            this.mounting = mounting;
        }

        String words() {
            return words;
        }

        Optional<Mounting> mounting() {
            return Optional.ofNullable(mounting);
        }
    }

    IntakeChoices {
        columns = columns.isEmpty() ? Map.of() : Map.copyOf(new EnumMap<>(columns));
    }

    /** What the headings suggest; each column is used once. */
    static IntakeChoices guessed(List<String> header) {
        Map<IntakeField, Integer> columns = new EnumMap<>(IntakeField.class);
        Set<Integer> used = new HashSet<>();
        for (IntakeField field : IntakeField.values()) {
            int column = field.guessed(header);
            if (column >= 0 && used.add(column)) {
                columns.put(field, column);
            }
        }
        boolean watts = columns.containsKey(IntakeField.SIZE_DC)
                && header.get(columns.get(IntakeField.SIZE_DC))
                        .toLowerCase(java.util.Locale.ROOT)
                        .matches(".*(^|[^k])w\\b.*");
        return new IntakeChoices(
                columns, watts ? SizeUnit.WATTS : SizeUnit.KILOWATTS, DateOrder.MONTH_FIRST, Unsaid.PITCHED_ROOF);
    }

    String cell(IntakeField field, List<String> cells) {
        Integer column = columns.get(field);
        return column == null || column >= cells.size() ? "" : cells.get(column);
    }
}
