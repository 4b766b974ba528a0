package org.plumbrow.survey;

import static org.plumbrow.survey.SurveyField.choice;
import static org.plumbrow.survey.SurveyField.lines;
import static org.plumbrow.survey.SurveyField.number;
import static org.plumbrow.survey.SurveyField.text;
import static org.plumbrow.survey.SurveyField.whole;
import static org.plumbrow.survey.SurveyField.yesNo;

import java.util.Arrays;
import java.util.List;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.calc.electrical.ServiceVoltage;
import org.plumbrow.web.Option;

/** What is read at the service: voltages, gear, meter, transformer, generator, distances. */
final class ServiceSheet {

    static final SurveyField TYPE = choice(
            "type",
            "Service type",
            Arrays.stream(Service.values())
                    .map(type -> new Option(type.name(), type.words()))
                    .toArray(Option[]::new));

    /** Every pair that any service has; which limits hold, the type says. */
    static final List<String> PAIRS = List.of("A-N", "B-N", "C-N", "A-B", "B-C", "A-C");

    static final SurveyField DISCONNECT_TO_METER = number(
                    "disconnect_to_meter_ft", "Planned disconnect to meter", 0, 500, "ft")
            .noted("Most utilities ask for 10 ft at most; what this one allows stands in its settings.");

    private ServiceSheet() {}

    static String voltName(String pair) {
        return "v_" + pair.replace("-", "");
    }

    private static SurveyField[] voltages() {
        return PAIRS.stream()
                .map(pair -> number(voltName(pair), voltLabel(pair), 0, ServiceVoltage.VOLTS.most(), "V")
                        .within(ServiceVoltage.VOLTS.least(), ServiceVoltage.VOLTS.most())
                        .noted(pair.endsWith("N") ? "Empty where there is no neutral or no such leg." : ""))
                .toArray(SurveyField[]::new);
    }

    private static String voltLabel(String pair) {
        return pair.endsWith("N")
                ? "Leg " + pair.charAt(0) + " to neutral"
                : "Leg " + pair.charAt(0) + " to leg " + pair.charAt(2);
    }

    static final List<FieldGroup> GROUPS = List.of(
            FieldGroup.of("Kind of service", TYPE),
            FieldGroup.of("Voltages", voltages()),
            FieldGroup.of(
                    "How the voltages were read",
                    text("volts_with", "Instrument", "Kind, category III or IV, month of its last calibration."),
                    text("volts_at", "Day and hour", "And whether the place was running: voltages fall under load.")),
            FieldGroup.of(
                    "Frequency and rotation",
                    number("frequency_hz", "Frequency", 59.9, 60.1, "Hz"),
                    choice(
                            "rotation",
                            "Phase rotation (three phases)",
                            new Option("ABC", "A, B, C"),
                            new Option("CBA", "C, B, A"))),
            FieldGroup.of(
                    "Main device and busbar",
                    number("main_a", "Main device rating", 60, 4000, "A"),
                    number("bus_a", "Busbar rating", 60, 4000, "A")
                            .noted("On the label inside. Leave it empty where nobody can read it."),
                    choice(
                            "main_position",
                            "Where the main device feeds the busbar",
                            new Option("END", "At one end"),
                            new Option("CENTRE", "In the middle"),
                            new Option("FEED_THROUGH", "With feed-through lugs")),
                    whole("free_spaces", "Free breaker spaces", 0, 84, ""),
                    number("interrupting_ka", "Interrupting rating of the gear", 5, 200, "kA"),
                    number("fault_ka", "Fault current at the service", 0.5, 200, "kA")
                            .noted("From the utility’s letter or portal.")),
            FieldGroup.of(
                    "Meter",
                    text("meter_number", "Meter number", "As it stands on the meter."),
                    text("meter_form", "Meter form", "2S, 12S, 16S, 9S"),
                    text("ct_ratio", "Current transformers", "For example 400:5. Empty where there are none.")),
            FieldGroup.of(
                    "Transformer",
                    number("transformer_kva", "Transformer rating", 5, 5000, "kVA"),
                    whole("transformer_phases", "Transformer phases", 1, 3, ""),
                    text("transformer_number", "Transformer number", ""),
                    choice(
                            "transformer_kind",
                            "Transformer stands",
                            new Option("POLE", "On a pole"),
                            new Option("PAD", "On a pad")),
                    yesNo("transformer_shared", "Other customers hang on it")),
            FieldGroup.of(
                    "Service conductors and grounding",
                    text("conductors", "Service conductors", "Size, material, overhead or underground."),
                    number("conductor_a", "Ampacity of the service conductors", 60, 4000, "A"),
                    text("grounding", "Grounding", "Electrode, and the place of the one neutral bond.")),
            FieldGroup.of(
                    "Generator and other sources",
                    yesNo("generator", "There is a generator"),
                    number("generator_kva", "Generator rating", 1, 3000, "kVA"),
                    text("generator_fuel", "Generator fuel", ""),
                    choice(
                            "generator_switch",
                            "Generator switch",
                            new Option("MANUAL", "Double-throw, by hand"),
                            new Option("AUTOMATIC", "Automatic"),
                            new Option("INTERLOCK", "Breaker interlock"),
                            new Option("NONE", "None")),
                    text("generator_place", "Where the generator connects", ""),
                    lines("other_sources", "Every other source", "Batteries, an older array, wind; or “none”.")),
            FieldGroup.of(
                    "Connection and distances",
                    text("interconnection", "Point of interconnection", "Where the new system would connect."),
                    number("array_to_inverter_ft", "Array to inverter", 1, 3000, "ft"),
                    number("inverter_to_poi_ft", "Inverter to point of interconnection", 1, 3000, "ft"),
                    number("inverter_to_meter_ft", "Inverter to meter", 1, 3000, "ft"),
                    DISCONNECT_TO_METER));
}
