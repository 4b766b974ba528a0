package org.plumbrow.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.plumbrow.web.Option;
import org.plumbrow.web.Refusal;

/** A part's form as the page shows it: fields with what was typed, what is refused and what is asked about. */
record PartForm(long version, List<Block> blocks, List<Problem> problems, int asked) {

    /**
     * Fields under one heading.
     *
     * @param number of the row, where the group repeats
     */
    record Block(FieldGroup group, int number, List<Line> lines) {
        public String legend() {
            return group.legend(number);
        }
    }

    /**
     * One field.
     *
     * @param ask what it is asked about; empty for nothing
     * @param refusal why it cannot be kept; empty for nothing
     */
    record Line(
            SurveyField field, String value, String refusal, String ask, boolean answered, boolean twice, String why) {
        public String name() {
            return field.name();
        }

        public String label() {
            return field.label();
        }

        public String hint() {
            return field.hint();
        }

        public String unit() {
            return field.unit();
        }

        public String kind() {
            return field.kind().name();
        }

        public boolean isFigure() {
            return field.isFigure();
        }

        public double least() {
            return field.usual().least();
        }

        public double most() {
            return field.usual().most();
        }

        /** "15 to 4,000 A": what is usual, for figures. */
        public String limits() {
            return SurveyField.limits(field.usual());
        }

        /** Keyboards for figures may lack the minus. */
        public String mode() {
            if (!field.isFigure() || field.possible().least() < 0) {
                return "";
            }
            return field.kind() == SurveyField.Kind.WHOLE ? "numeric" : "decimal";
        }

        public List<Option> options() {
            return field.options();
        }
    }

    record Problem(String field, String sentence) {}

    static PartForm stored(SurveyReading.Part part) {
        return new Making(
                        part.part(),
                        part.readings().values(),
                        part.readings(),
                        part.sheet().disconnectMostFt(),
                        Map.of())
                .form(part.version(), List.of());
    }

    /** As typed, with what is refused at its field. */
    static PartForm typed(SurveyReading.Part now, long version, Map<String, String> typed, List<Refusal> refusals) {
        Map<String, String> sentences = new HashMap<>();
        refusals.forEach(refusal -> sentences.put(refusal.field(), refusal.sentence()));
        PartReadings readable =
                PartTyping.read(now.part(), typed, PartReadings.EMPTY).readings();
        return new Making(now.part(), typed, readable, now.sheet().disconnectMostFt(), sentences)
                .form(
                        version,
                        refusals.stream()
                                .map(one -> new Problem(one.field(), one.sentence()))
                                .toList());
    }

    private record Making(
            SurveyPart part,
            Map<String, String> values,
            PartReadings readings,
            int disconnectMostFt,
            Map<String, String> refusals) {

        PartForm form(long version, List<Problem> problems) {
            Map<String, Asks.Ask> asks = new HashMap<>();
            Asks.of(part, readings, disconnectMostFt).forEach(ask -> asks.put(ask.field(), ask));
            List<Block> blocks = new ArrayList<>();
            for (FieldGroup group : part.groups()) {
                blocks(group, asks, blocks);
            }
            int open =
                    (int) asks.values().stream().filter(ask -> !ask.answered()).count();
            return new PartForm(version, blocks, problems, open);
        }

        private void blocks(FieldGroup group, Map<String, Asks.Ask> asks, List<Block> blocks) {
            if (!group.repeats()) {
                blocks.add(new Block(group, 1, lines(group.fields(), asks)));
                return;
            }
            for (int row = 1; row <= rows(group); row++) {
                blocks.add(new Block(group, row, lines(group.row(row), asks)));
            }
        }

        /** One empty row behind the last that is written. */
        private int rows(FieldGroup group) {
            int last = 0;
            for (int row = 1; row <= group.most(); row++) {
                if (group.row(row).stream()
                        .anyMatch(
                                field -> !values.getOrDefault(field.name(), "").isBlank())) {
                    last = row;
                }
            }
            return Math.min(group.most(), last + 1);
        }

        private List<Line> lines(List<SurveyField> fields, Map<String, Asks.Ask> asks) {
            return fields.stream()
                    .map(field -> line(field, Optional.ofNullable(asks.get(field.name()))))
                    .toList();
        }

        private Line line(SurveyField field, Optional<Asks.Ask> ask) {
            return new Line(
                    field,
                    values.getOrDefault(field.name(), ""),
                    refusals.getOrDefault(field.name(), ""),
                    ask.map(Asks.Ask::sentence).orElse(""),
                    ask.map(Asks.Ask::answered).orElse(false),
                    !values.getOrDefault(field.name() + PartTyping.TWICE, "").isBlank(),
                    values.getOrDefault(field.name() + PartReadings.WHY, ""));
        }
    }
}
