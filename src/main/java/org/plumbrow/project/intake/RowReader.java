package org.plumbrow.project.intake;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.evidence.table.CellUnreadable;
import org.plumbrow.evidence.table.Cells;
import org.plumbrow.evidence.table.UserTable;

/** Reads the cells of one row and gathers what is wrong, so that all of it is said at once. */
final class RowReader {

    private final IntakeChoices choices;
    private final UserTable.Row row;
    private final List<String> wrong = new ArrayList<>();

    RowReader(IntakeChoices choices, UserTable.Row row) {
        this.choices = choices;
        this.row = row;
    }

    @FunctionalInterface
    private interface Reading<T> {
        Optional<T> of(String cell) throws CellUnreadable;
    }

    String text(IntakeField field) {
        String cell = choices.cell(field, row.cells());
        return Cells.isEmpty(cell) ? "" : cell.strip();
    }

    /** Text of a limited length. */
    String text(IntakeField field, int mostLetters) {
        String text = text(field);
        if (text.length() > mostLetters) {
            wrong.add(field.words() + ": shorten it to " + mostLetters + " letters");
        }
        return text;
    }

    @Nullable
    BigDecimal number(IntakeField field, Range range) {
        return number(field, range, BigDecimal.ONE);
    }

    /** @param factor by which the file's figure is multiplied before it is held against its limits */
    @Nullable
    BigDecimal number(IntakeField field, Range range, BigDecimal factor) {
        BigDecimal read = read(field, Cells::number);
        BigDecimal value = read == null ? null : read.multiply(factor);
        return value != null && isWithin(field, range, value.doubleValue(), value) ? value : null;
    }

    @Nullable
    Integer whole(IntakeField field, Range range) {
        Integer value = read(field, Cells::whole);
        return value != null && isWithin(field, range, value, value) ? value : null;
    }

    @Nullable
    LocalDate date(IntakeField field) {
        return read(field, cell -> Cells.date(cell, choices.dateOrder()));
    }

    @Nullable
    Boolean yesOrNo(IntakeField field) {
        return read(field, Cells::yesOrNo);
    }

    void isWrong(String sentence) {
        wrong.add(sentence);
    }

    /** "Line 47: …" for each thing to mend. */
    List<String> wrong() {
        return wrong.stream()
                .map(what -> "Line " + row.line() + ": " + what + ".")
                .toList();
    }

    private <T> @Nullable T read(IntakeField field, Reading<T> reading) {
        try {
            return reading.of(choices.cell(field, row.cells())).orElse(null);
        } catch (CellUnreadable unreadable) {
            wrong.add(field.words() + ": " + unreadable.sentence());
            return null;
        }
    }

    private boolean isWithin(IntakeField field, Range range, double value, Number written) {
        if (range.holds(value)) {
            return true;
        }
        wrong.add("%s: %s is outside %s to %s %s"
                .formatted(field.words(), plain(written), plain(range.least()), plain(range.most()), range.unit())
                .strip());
        return false;
    }

    private static String plain(Number number) {
        return new BigDecimal(number.toString()).stripTrailingZeros().toPlainString();
    }
}
