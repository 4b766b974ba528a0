package org.plumbrow.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.calc.electrical.Service.Band;
import org.plumbrow.calc.electrical.ServiceVoltage;

/** What a reading that is kept is asked about: outside its limits, or not fitting the others. Pure. */
final class Asks {

    private static final double MOST_UNBALANCE_PERCENT = 3;

    private Asks() {}

    /**
     * @param field at which it is asked
     * @param answered whether it was read twice and somebody said why it stays
     */
    record Ask(SurveyPart part, String field, String sentence, boolean answered) {}

    /** @param disconnectMostFt what the utility allows between its disconnect and its meter */
    static List<Ask> of(SurveyPart part, PartReadings read, int disconnectMostFt) {
        List<Ask> asks = new ArrayList<>();
        if (part == SurveyPart.SERVICE) {
            service(read, asks, disconnectMostFt);
        }
        for (SurveyField field : part.fields()) {
            boolean ownRule = asks.stream().anyMatch(ask -> ask.field.equals(field.name()));
            if (!ownRule && field.isFigure() && read.has(field.name())) {
                outside(field, read).ifPresent(sentence -> asks.add(ask(part, field.name(), sentence, read)));
            }
        }
        return asks;
    }

    static List<Ask> open(SurveyPart part, PartReadings read, int disconnectMostFt) {
        return of(part, read, disconnectMostFt).stream()
                .filter(ask -> !ask.answered)
                .toList();
    }

    private static Ask ask(SurveyPart part, String field, String sentence, PartReadings read) {
        boolean answered =
                read.has(field + PartTyping.TWICE) && !read.why(field).isEmpty();
        return new Ask(part, field, sentence, answered);
    }

    private static Optional<String> outside(SurveyField field, PartReadings read) {
        Double value = read.number(field.name());
        if (value == null || field.usual().holds(value)) {
            return Optional.empty();
        }
        return Optional.of("%s: %s is outside %s. It is kept. Read it again; if it stays, say why."
                .formatted(field.label(), field.words(read.written(field.name())), SurveyField.limits(field.usual())));
    }

    private static void service(PartReadings read, List<Ask> asks, int disconnectMostFt) {
        for (Ask voltage : voltages(read)) {
            asks.add(voltage);
        }
        Double toMeter = read.number(ServiceSheet.DISCONNECT_TO_METER.name());
        if (toMeter != null && toMeter > disconnectMostFt) {
            asks.add(ask(
                    SurveyPart.SERVICE,
                    ServiceSheet.DISCONNECT_TO_METER.name(),
                    "The disconnect would be %s ft from the meter; the utility allows %d ft. Move it, or say by whom it is agreed in writing."
                            .formatted(read.written(ServiceSheet.DISCONNECT_TO_METER.name()), disconnectMostFt),
                    read));
        }
        Double fault = read.number("fault_ka");
        Double gear = read.number("interrupting_ka");
        if (fault != null && gear != null && fault > gear) {
            asks.add(ask(
                    SurveyPart.SERVICE,
                    "interrupting_ka",
                    "The gear interrupts %s kA, and %s kA can flow there. Read the label again; if it stays, the designer must know."
                            .formatted(read.written("interrupting_ka"), read.written("fault_ka")),
                    read));
        }
    }

    private static List<Ask> voltages(PartReadings read) {
        Service type = FactsReading.type(read);
        if (type == null) {
            return List.of();
        }
        ServiceVoltage.Result result = ServiceVoltage.judge(type, FactsReading.volts(read));
        List<Ask> asks = new ArrayList<>();
        warning(result).ifPresent(sentence -> asks.add(ask(SurveyPart.SERVICE, "type", sentence, read)));
        result.readings().stream()
                .filter(one -> one.band() == Band.OUTSIDE)
                .forEach(one -> asks.add(ask(
                        SurveyPart.SERVICE,
                        ServiceSheet.voltName(one.pair().code()),
                        one.sentence()
                                + " It is kept. Read it again; if it stays, call the utility before design, and say what they answered.",
                        read)));
        return asks;
    }

    private static Optional<String> warning(ServiceVoltage.Result result) {
        return result.warning()
                .or(() -> result.unbalancePercent()
                        .filter(percent -> percent > MOST_UNBALANCE_PERCENT)
                        .map(percent -> String.format(
                                Locale.US,
                                "The legs are %.1f %% out of balance; 3 %% is usual at most. Read them again; if it stays, say what the utility answered.",
                                percent)));
    }

    /** Not asked about, but said beside the voltages: what lies only within the wider range. */
    static List<String> remarks(PartReadings read) {
        Service type = FactsReading.type(read);
        if (type == null) {
            return List.of();
        }
        return ServiceVoltage.judge(type, FactsReading.volts(read)).readings().stream()
                .filter(one -> one.band() == Band.B)
                .map(ServiceVoltage.Judged::sentence)
                .toList();
    }
}
