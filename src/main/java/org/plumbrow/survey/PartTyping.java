package org.plumbrow.survey;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.survey.SurveyField.Kind;
import org.plumbrow.web.NumbersAsWritten;
import org.plumbrow.web.Refusal;

/** Reads what somebody typed into a part's form. Only what is no value is refused; outside its usual limits it is kept. */
final class PartTyping {

    /** Behind the name of a field: the tick "I read it twice; it stays". */
    static final String TWICE = ".twice";

    static final int LONGEST_TEXT = 160;
    static final int LONGEST_LINES = 2000;

    private PartTyping() {}

    record Read(PartReadings readings, List<Refusal> refusals) {}

    /** @param before as it stands: why a reading stays is dropped when the reading itself is another */
    static Read read(SurveyPart part, Map<String, String> typed, PartReadings before) {
        Map<String, String> values = new HashMap<>();
        List<Refusal> refusals = new ArrayList<>();
        for (SurveyField field : part.fields()) {
            String text = text(typed, field.name());
            Optional<String> refused = refusal(field, text);
            refused.ifPresent(sentence -> refusals.add(new Refusal(field.name(), sentence)));
            if (refused.isEmpty() && !text.isEmpty()) {
                values.put(field.name(), canonical(field, text));
                reason(field, typed, before, values);
            }
        }
        return new Read(new PartReadings(values), refusals);
    }

    static String text(Map<String, String> typed, String name) {
        return typed.getOrDefault(name, "").replace("\r", "").strip();
    }

    private static void reason(
            SurveyField field, Map<String, String> typed, PartReadings before, Map<String, String> values) {
        String why = text(typed, field.name() + PartReadings.WHY);
        String twice = text(typed, field.name() + TWICE);
        boolean sameReading = before.written(field.name()).equals(values.get(field.name()));
        boolean sameReason = before.why(field.name()).equals(why)
                && before.written(field.name() + TWICE).equals(twice);
        if (!sameReading && sameReason) {
            return;
        }
        values.put(field.name() + PartReadings.WHY, why.substring(0, Math.min(why.length(), LONGEST_TEXT)));
        values.put(field.name() + TWICE, twice.isEmpty() ? "" : "YES");
    }

    private static Optional<String> refusal(SurveyField field, String text) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        return switch (field.kind()) {
            case NUMBER, WHOLE -> figure(field, text);
            case TEXT -> tooLong(field, text, LONGEST_TEXT);
            case LINES -> tooLong(field, text, LONGEST_LINES);
            case CHOICE ->
                field.options().stream().anyMatch(option -> option.value().equals(text))
                        ? Optional.empty()
                        : Optional.of(field.label() + ": choose one of the list.");
            case DATE -> date(field, text);
        };
    }

    private static Optional<String> tooLong(SurveyField field, String text, int longest) {
        return text.length() <= longest
                ? Optional.empty()
                : Optional.of("%s: write it in at most %d characters.".formatted(field.label(), longest));
    }

    private static Optional<String> figure(SurveyField field, String text) {
        try {
            BigDecimal value = NumbersAsWritten.read(text);
            boolean whole =
                    field.kind() == Kind.NUMBER || value.stripTrailingZeros().scale() <= 0;
            if (whole && field.possible().holds(value.doubleValue()) && value.scale() <= 6) {
                return Optional.empty();
            }
        } catch (NumberFormatException e) {
            // said below
        }
        String kind = field.kind() == Kind.WHOLE ? "a whole number" : "a number";
        return Optional.of("%s: “%s” is no reading. Write %s from %s."
                .formatted(field.label(), shortened(text), kind, SurveyField.limits(field.possible())));
    }

    private static String shortened(String text) {
        return text.length() <= 20 ? text : text.substring(0, 20) + "…";
    }

    private static Optional<String> date(SurveyField field, String text) {
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() >= 2000 && date.getYear() <= 2100) {
                return Optional.empty();
            }
        } catch (DateTimeParseException e) {
            // said below
        }
        return Optional.of(field.label() + ": write a date from 2000 on, for example 2027-03-26.");
    }

    /** As it is stored: a figure without commas, units and needless zeros. */
    private static String canonical(SurveyField field, String text) {
        if (!field.isFigure()) {
            return text;
        }
        BigDecimal exact = NumbersAsWritten.read(text);
        boolean decimals = field.kind() == Kind.NUMBER && exact.scale() > 0 && exact.scale() <= 1;
        BigDecimal plain = exact.stripTrailingZeros();
        return (decimals ? exact : plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }
}
