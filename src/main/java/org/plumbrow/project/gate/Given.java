package org.plumbrow.project.gate;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One part of an answer, as somebody gives it. */
public sealed interface Given {

    AnswerKind kind();

    /** @param note a remark; may be empty */
    record Confirmed(String note) implements Given {
        @Override
        public AnswerKind kind() {
            return AnswerKind.CONFIRMATION;
        }
    }

    /**
     * @param value in the item's unit; null for an item that is read in words
     * @param text what was read, for an item that is read in words; else empty
     * @param label where or of what: "leg B", "string 3"; may be empty. The same label again replaces the reading.
     * @param explanation why a reading outside its limits stays; may be empty
     */
    record Read(@Nullable BigDecimal value, String text, String label, String explanation) implements Given {
        @Override
        public AnswerKind kind() {
            return AnswerKind.READING;
        }
    }

    record OnDate(LocalDate date) implements Given {
        @Override
        public AnswerKind kind() {
            return AnswerKind.DATE;
        }
    }

    /** A photo, document or signature that is kept already. */
    record Kept(AnswerKind kind, UUID evidenceId) implements Given {}

    static Given confirm() {
        return new Confirmed("");
    }

    static Given confirm(String note) {
        return new Confirmed(note);
    }

    static Given reading(BigDecimal value) {
        return new Read(value, "", "", "");
    }

    static Given reading(BigDecimal value, String label, String explanation) {
        return new Read(value, "", label, explanation);
    }

    /** For an item without a unit, which is read in words: a meter number, a type of service. */
    static Given reading(String text) {
        return new Read(null, text, "", "");
    }

    static Given date(LocalDate date) {
        return new OnDate(date);
    }

    static Given photo(UUID evidenceId) {
        return new Kept(AnswerKind.PHOTO, evidenceId);
    }

    static Given document(UUID evidenceId) {
        return new Kept(AnswerKind.DOCUMENT, evidenceId);
    }

    static Given signature(UUID evidenceId) {
        return new Kept(AnswerKind.SIGNATURE, evidenceId);
    }
}
