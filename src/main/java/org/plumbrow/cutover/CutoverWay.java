package org.plumbrow.cutover;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.design.Connection;
import org.plumbrow.design.ConnectionKind;
import org.plumbrow.design.DesignFacts;
import org.plumbrow.design.Device;
import org.plumbrow.design.DeviceKind;
import org.plumbrow.design.Generator;
import org.plumbrow.survey.SurveyFacts;

/**
 * How the power is taken and brought back on a site, by the design revision in force and by the meter that the survey saw.
 *
 * @param revision letter of the frozen revision
 * @param opening who takes the power, and where
 * @param connection how the array meets the service, with its place and devices
 * @param devices every device between inverters and service that can be opened: mark, name, place
 * @param transfer the generator's switch with its place; empty without a generator
 * @param service as drawn; null when the design does not say
 */
public record CutoverWay(
        String revision,
        Opening opening,
        String connection,
        List<String> devices,
        String transfer,
        @Nullable Service service) {

    public CutoverWay {
        devices = List.copyOf(devices);
    }

    /** Where the power is taken. */
    public enum Opening {
        METER("the utility removes the meter"),
        TRANSFORMER("the utility opens at the transformer; the meter on current transformers stays"),
        UTILITY("the utility opens the service; the survey does not say what meter it is"),
        MAIN("the electrician opens the main; the meter stays");

        private final String words;

        Opening(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        public boolean isByUtility() {
            return this != MAIN;
        }
    }

    /** A tap ahead of the main, or another main, lies on wires that only the utility can take the power from. */
    public static CutoverWay of(DesignFacts design, SurveyFacts survey) {
        return new CutoverWay(
                design.revision() == null ? "" : design.revision(),
                opening(design, survey),
                connection(design),
                design.devices().stream()
                        .filter(device -> device.kind() != DeviceKind.PANEL && device.kind() != DeviceKind.METER)
                        .map(CutoverWay::device)
                        .toList(),
                transfer(design.generator()),
                design.service().type());
    }

    private static Opening opening(DesignFacts design, SurveyFacts survey) {
        boolean aheadOfTheMain = design.connection().kind() == ConnectionKind.SUPPLY_SIDE_TAP
                || design.connection().newMainA() != null;
        if (!aheadOfTheMain) {
            return Opening.MAIN;
        }
        SurveyFacts.Meter meter = survey.service().meter();
        if (meter.number() == null && meter.form() == null && meter.ctRatio() == null) {
            return Opening.UTILITY;
        }
        return meter.ctRatio() == null ? Opening.METER : Opening.TRANSFORMER;
    }

    private static String connection(DesignFacts design) {
        Connection made = design.connection();
        Stream<String> parts = Stream.of(
                made.kind().words(),
                made.breakerA() == null || made.kind() == ConnectionKind.SUPPLY_SIDE_TAP
                        ? ""
                        : amperes(made.breakerA()),
                made.newMainA() == null ? "" : "new main of " + amperes(made.newMainA()),
                made.place());
        return String.join(", ", parts.filter(part -> !part.isBlank()).toList());
    }

    private static String amperes(double amperes) {
        return "%.0f A".formatted(amperes);
    }

    private static String device(Device device) {
        return Stream.of(device.mark() + " " + device.name(), device.place())
                .filter(part -> !part.isBlank())
                .reduce((one, other) -> one + " (" + other + ")")
                .orElse(device.mark());
    }

    private static String transfer(@Nullable Generator generator) {
        if (generator == null) {
            return "";
        }
        String kind =
                generator.switchKind().isBlank() ? "transfer switch" : generator.switchKind() + " transfer switch";
        return kind
                + (generator.place().isBlank() ? "" : " (" + generator.place() + ")")
                + (generator.arrayOnUtilitySide()
                        ? ""
                        : "; the array is on the generator’s side and stays open while it runs");
    }

    public Optional<Service> drawnService() {
        return Optional.ofNullable(service);
    }

    /** In one sentence, as the readiness page says it. */
    public String sentence() {
        return "Connection: " + connection + ". At the start " + opening.words() + ".";
    }
}
