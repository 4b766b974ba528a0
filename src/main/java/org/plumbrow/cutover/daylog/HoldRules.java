package org.plumbrow.cutover.daylog;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.plumbrow.calc.outage.SupplyRestored;

/** What keeps a hold point from being signed. An empty list opens it. */
final class HoldRules {

    private final LogState state;
    private final Readings readings;

    HoldRules(LogState state, Readings readings) {
        this.state = state;
        this.readings = readings;
    }

    /** Sentences that say what is missing or wrong, each with what to do. */
    List<String> against(Hold hold) {
        List<String> against = new ArrayList<>();
        state.holdBefore(hold.name())
                .ifPresent(earlier -> against.add("Hold point " + earlier.code() + " is not signed: "
                        + earlier.words().toLowerCase(Locale.ROOT) + "."));
        stepsBefore(hold).forEach(step -> addMissing(step, against));
        switch (hold) {
            case H1 -> h1(against);
            case H2 -> h2(against);
            case H3 -> h3(against);
            case H4 -> h4(against);
            case H5 -> {}
        }
        return against;
    }

    /** May this person sign as this part? */
    Optional<String> againstName(Hold hold, Hold.Part part, String name) {
        if (hold == Hold.H1 && hasSignedOtherPart(hold, part, name)) {
            return Optional.of("The person in charge and the customer sign each for themselves. Write the other name.");
        }
        if (hold == Hold.H3 && part == Hold.Part.SECOND_PERSON && hasSigned(Hold.H2, name)) {
            return Optional.of(
                    name + " did the work and signed H2. Another qualified person checks it and signs here.");
        }
        return Optional.empty();
    }

    private boolean hasSigned(Hold hold, String name) {
        return state.signatures(hold).stream()
                .map(one -> one.entry().signature())
                .anyMatch(signature -> signature != null && sameName(signature.name(), name));
    }

    private boolean hasSignedOtherPart(Hold hold, Hold.Part part, String name) {
        return state.signatures(hold).stream()
                .map(one -> one.entry().signature())
                .anyMatch(
                        signature -> signature != null && signature.part() != part && sameName(signature.name(), name));
    }

    private static boolean sameName(String one, String other) {
        return one.replaceAll("\\s+", " ")
                .strip()
                .equalsIgnoreCase(other.replaceAll("\\s+", " ").strip());
    }

    /** The steps between the hold point before and this one. */
    private List<LogStep> stepsBefore(Hold hold) {
        int position = state.step(hold.name()).position();
        int from = state.steps().stream()
                .filter(step -> step.hold() && step.position() < position)
                .mapToInt(LogStep::position)
                .max()
                .orElse(0);
        return state.steps().stream()
                .filter(step -> step.position() > from && step.position() < position && step.applies())
                .toList();
    }

    private void addMissing(LogStep step, List<String> against) {
        if (state.doneAt(step.code()).isEmpty()) {
            against.add(
                    "Step " + step.code() + " is not done yet: " + step.words().toLowerCase(Locale.ROOT) + ".");
            return;
        }
        for (Asked asked : readings.of(step.code())) {
            if (asked.required() && state.value(step.code(), asked.quantity()).isEmpty()) {
                against.add("Step " + step.code() + ": \"" + asked.words() + "\" is not read.");
            }
        }
    }

    private void h1(List<String> against) {
        if (state.reversal().isEmpty()) {
            against.add("The latest reversal time is not set. The person in charge sets it and tells everybody.");
        }
        readings.judged(state, "2").warning().ifPresent(against::add);
    }

    private void h2(List<String> against) {
        for (String quantity : List.of(Readings.LIVE_BEFORE, Readings.LIVE_AFTER)) {
            number("6", quantity)
                    .filter(volts -> volts < Readings.LEAST_ON_LIVE_SOURCE_V)
                    .ifPresent(
                            volts -> against.add(
                                    "The tester did not show a source known to be live. Prove absence of voltage again with another tester."));
        }
        for (String pair : readings.deadPairs()) {
            number("6", Readings.dead(pair))
                    .filter(volts -> volts > Readings.MOST_WHEN_DEAD_V)
                    .ifPresent(volts ->
                            against.add("%s: %.1f V. Voltage is present: stop, find the second source, prove again."
                                    .formatted(pair, volts)));
        }
    }

    private void h3(List<String> against) {
        number("8", Readings.INSULATION)
                .filter(megohms -> megohms < Readings.LEAST_INSULATION_MOHM)
                .ifPresent(megohms -> against.add(
                        "Insulation of %.2f MΩ is below 1 MΩ. Find the fault or reverse.".formatted(megohms)));
    }

    private void h4(List<String> against) {
        SupplyRestored restored = readings.restored(state);
        restored.refusals().forEach(refusal -> against.add(refusal + " Open again and reverse."));
        if (against.isEmpty()) {
            restored.missing().forEach(pair -> against.add(pair + " is not read."));
        }
    }

    private Optional<Double> number(String step, String quantity) {
        return state.value(step, quantity).map(Double::valueOf);
    }
}
