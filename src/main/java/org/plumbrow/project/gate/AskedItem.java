package org.plumbrow.project.gate;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.Duty;
import org.plumbrow.project.Stage;

/**
 * An item of a checklist as it is asked.
 *
 * @param code {@code installed.9}
 * @param unit of a reading; empty for one that is read in words
 * @param low least usual value in the unit; null without one
 * @param least how many readings and photos at least
 * @param condition where it is asked
 * @param required whether the gate stays shut without it, where it is asked
 * @param safety protects people, animals or equipment: never waived
 * @param duty who acts on it
 */
public record AskedItem(
        String code,
        String words,
        String hint,
        List<AnswerKind> kinds,
        String unit,
        @Nullable BigDecimal low,
        @Nullable BigDecimal high,
        int least,
        Condition condition,
        boolean required,
        boolean safety,
        Duty duty) {

    public Stage stage() {
        return stageOf(code);
    }

    public int number() {
        return Integer.parseInt(code.substring(code.indexOf('.') + 1));
    }

    public boolean asks(AnswerKind kind) {
        return kinds.contains(kind);
    }

    /** Whether its reading is a figure in a unit, not words. */
    public boolean readsFigures() {
        return asks(AnswerKind.READING) && !unit.isEmpty();
    }

    public boolean isOutside(@Nullable BigDecimal value) {
        return value != null
                && ((low != null && value.compareTo(low) < 0) || (high != null && value.compareTo(high) > 0));
    }

    /** "114 to 126 V", "at least 1 MΩ"; empty without limits. */
    public String limits() {
        if (low != null && high != null) {
            return plain(low) + " to " + plain(high) + " " + unit;
        }
        if (low != null) {
            return "at least " + plain(low) + " " + unit;
        }
        return high == null ? "" : "at most " + plain(high) + " " + unit;
    }

    static String plain(BigDecimal figure) {
        return figure.stripTrailingZeros().toPlainString().replace('-', '−');
    }

    static Stage stageOf(String code) {
        return Stage.valueOf(code.substring(0, code.indexOf('.')).toUpperCase(Locale.ROOT));
    }
}
