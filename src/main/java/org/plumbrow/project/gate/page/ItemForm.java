package org.plumbrow.project.gate.page;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.AnswerPart;
import org.plumbrow.project.gate.AskedItem;
import org.plumbrow.project.gate.Given;
import org.plumbrow.project.gate.ItemView;
import org.plumbrow.web.Conflict;
import org.plumbrow.web.NumbersAsWritten;
import org.springframework.validation.Errors;

/**
 * What is typed at one item. Papers that are kept already, though the answer was refused or met another, come back by
 * their ids, so that no photo is taken twice.
 */
record ItemForm(
        @Nullable String version,
        @Nullable Boolean confirmed,
        @Nullable String note,
        @Nullable String reading,
        @Nullable String label,
        @Nullable String explanation,
        @Nullable String date,
        @Nullable String signerName,
        @Nullable String signerTrade,
        @Nullable String drawing,
        @Nullable List<String> photoId,
        @Nullable List<String> documentId) {

    /** The form as it opens: a reading that is to be explained stands in it. */
    static ItemForm of(ItemView item) {
        AnswerPart asked = toExplain(item);
        return new ItemForm(
                Long.toString(item.version()),
                null,
                null,
                asked == null || asked.number() == null ? null : NumbersWritten.of(asked.number()),
                asked == null ? null : asked.label(),
                null,
                null,
                null,
                null,
                null,
                List.of(),
                List.of());
    }

    /** The reading outside its limits that nobody has explained; null without one. */
    static @Nullable AnswerPart toExplain(ItemView item) {
        if (item.answer() == null) {
            return null;
        }
        return item.answer().parts().stream()
                .filter(part -> part.kind() == AnswerKind.READING
                        && part.note().isEmpty()
                        && item.asked().isOutside(part.number()))
                .findFirst()
                .orElse(null);
    }

    boolean signs() {
        return !text(signerName).isEmpty() || !text(drawing).isEmpty();
    }

    long seen() {
        String typed = text(version);
        return typed.matches("\\d{1,9}") ? Long.parseLong(typed) : 0;
    }

    ItemForm with(List<String> photos, List<String> documents) {
        return new ItemForm(
                version,
                confirmed,
                note,
                reading,
                label,
                explanation,
                date,
                signerName,
                signerTrade,
                drawing,
                photos,
                documents);
    }

    /** The parts that were filled in; a figure that is none is an error at its field. */
    List<Given> given(AskedItem asked, Errors errors) {
        List<Given> parts = new ArrayList<>();
        if (Boolean.TRUE.equals(confirmed)) {
            parts.add(Given.confirm(text(note)));
        }
        if (!text(reading).isEmpty()) {
            reading(asked, errors, parts);
        }
        if (!text(date).isEmpty()) {
            Optional<LocalDate> day = Days.read(date);
            day.ifPresentOrElse(
                    known -> parts.add(Given.date(known)), () -> errors.rejectValue("date", "refused", Days.REFUSAL));
        }
        ids(photoId).forEach(id -> parts.add(Given.photo(id)));
        ids(documentId).forEach(id -> parts.add(Given.document(id)));
        return parts;
    }

    private void reading(AskedItem asked, Errors errors, List<Given> parts) {
        if (!asked.readsFigures()) {
            parts.add(new Given.Read(null, text(reading), text(label), text(explanation)));
            return;
        }
        try {
            parts.add(Given.reading(NumbersAsWritten.read(text(reading)), text(label), text(explanation)));
        } catch (NumberFormatException word) {
            errors.rejectValue(
                    "reading",
                    "refused",
                    "Write the reading as a number in " + asked.unit() + ", for example " + example(asked) + ".");
        }
    }

    private static String example(AskedItem asked) {
        if (asked.high() != null) {
            return NumbersWritten.of(asked.high());
        }
        return asked.low() == null ? "12.5" : NumbersWritten.of(asked.low());
    }

    /** Theirs beside yours: what both gave, to choose; papers of both stay and are not asked about. */
    List<Conflict.Row> beside(ItemView theirs) {
        List<Conflict.Row> rows = new ArrayList<>();
        if (!text(reading).isEmpty()) {
            AnswerPart other = theirReading(theirs);
            rows.add(new Conflict.Row("Reading", "reading", written(other, text(reading)), text(reading)));
            rows.add(same("label", text(label)));
            rows.add(new Conflict.Row(
                    "Explanation", "explanation", other == null ? text(explanation) : other.note(), text(explanation)));
        }
        if (!text(date).isEmpty()) {
            AnswerPart other = newest(theirs, AnswerKind.DATE);
            String day = other == null || other.date() == null
                    ? text(date)
                    : other.date().toString();
            rows.add(new Conflict.Row("Day", "date", day, text(date)));
        }
        if (Boolean.TRUE.equals(confirmed)) {
            rows.add(same("confirmed", "true"));
            AnswerPart other = newest(theirs, AnswerKind.CONFIRMATION);
            rows.add(new Conflict.Row("Remark", "note", other == null ? text(note) : other.note(), text(note)));
        }
        list(photoId).forEach(id -> rows.add(same("photoId", id)));
        list(documentId).forEach(id -> rows.add(same("documentId", id)));
        if (signs()) {
            rows.add(same("signerName", text(signerName)));
            rows.add(same("signerTrade", text(signerTrade)));
            rows.add(same("drawing", text(drawing)));
        }
        return rows;
    }

    private @Nullable AnswerPart theirReading(ItemView theirs) {
        return theirs.answer() == null
                ? null
                : theirs.answer().parts().stream()
                        .filter(part -> part.kind() == AnswerKind.READING
                                && part.label().equalsIgnoreCase(text(label)))
                        .findFirst()
                        .orElse(null);
    }

    private static @Nullable AnswerPart newest(ItemView theirs, AnswerKind kind) {
        return theirs.answer() == null
                ? null
                : theirs.answer().parts().stream()
                        .filter(part -> part.kind() == kind)
                        .reduce((earlier, later) -> later)
                        .orElse(null);
    }

    private static String written(@Nullable AnswerPart part, String otherwise) {
        if (part == null) {
            return otherwise;
        }
        return part.number() == null ? part.text() : NumbersWritten.of(part.number());
    }

    private static Conflict.Row same(String field, String value) {
        return new Conflict.Row(field, field, value, value);
    }

    static String text(@Nullable String typed) {
        return typed == null ? "" : typed.strip();
    }

    private static List<UUID> ids(@Nullable List<String> sent) {
        return list(sent).stream()
                .filter(id -> id.matches("[0-9a-fA-F-]{36}"))
                .map(UUID::fromString)
                .toList();
    }

    static <T> List<T> list(@Nullable List<T> sent) {
        return sent == null ? List.of() : sent;
    }
}
