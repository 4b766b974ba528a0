package org.plumbrow.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.plumbrow.project.JournalEvent;

/**
 * Readings of a part were written. Figures and choices stand in the line with what they were; of words only that they
 * changed, for they may name people and places.
 */
record PartWritten(UUID projectId, String sentence, Map<String, String> facts) implements JournalEvent {

    static final String KIND = "survey.written";

    private static final int SAID = 4;

    @Override
    public String kind() {
        return KIND;
    }

    static PartWritten of(UUID projectId, SurveyPart part, PartReadings before, PartReadings after) {
        List<String> said = new ArrayList<>();
        Map<String, String> facts = new TreeMap<>();
        facts.put("part", part.path());
        for (SurveyField field : part.fields()) {
            String was = before.written(field.name());
            String now = after.written(field.name());
            if (!was.equals(now)) {
                said.add(words(field, was, now));
                facts(field, was, now, facts);
            } else if (!before.why(field.name()).equals(after.why(field.name()))) {
                said.add(field.label() + ": why it stays");
            }
        }
        return new PartWritten(projectId, sentence(part, said), facts);
    }

    private static boolean isOpen(SurveyField field) {
        return field.isFigure() || field.kind() == SurveyField.Kind.CHOICE;
    }

    private static String words(SurveyField field, String was, String now) {
        if (!isOpen(field)) {
            return field.label();
        }
        String before = was.isEmpty() ? "" : " (was " + field.words(was) + ")";
        return field.label() + " " + field.words(now) + before;
    }

    private static void facts(SurveyField field, String was, String now, Map<String, String> facts) {
        if (isOpen(field)) {
            facts.put(field.name() + ".from", was);
            facts.put(field.name() + ".to", now);
        }
    }

    private static String sentence(SurveyPart part, List<String> said) {
        int more = said.size() - SAID;
        String list = String.join("; ", said.subList(0, Math.min(SAID, said.size())));
        String rest = more > 0 ? "; and %d more".formatted(more) : "";
        return "Survey, %s: %s%s.".formatted(part.words().toLowerCase(java.util.Locale.ROOT), list, rest);
    }
}
