package org.plumbrow.cutover.daylog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.plumbrow.calc.calendar.ClockWords;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.calc.outage.SupplyRestored;
import org.plumbrow.calc.outage.ranking.Factor;
import org.plumbrow.cutover.DayBeforeReading;
import org.plumbrow.cutover.Outages;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.plumbrow.project.gate.SeenAt;
import org.plumbrow.web.May;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the gate to the cutover reads in the day log: readings, hold points, minutes. Nobody gives them a second time. */
@Configuration(proxyBeanMethods = false)
class LogGateRules {

    private static final Finding NO_LOG =
            new Finding.CannotTell("The day log is not written yet.", "It opens on the day of the outage.");

    /** What a rule sees of a log. */
    private record Seen(LogState state, Readings readings) {}

    /** The log of the project's window, read once a look. */
    private record Log(Optional<Seen> seen) {}

    /** A rule that looks into the log of the project's window. */
    private record LogRule(String item, Outages outages, LogRows rows, Function<Seen, Finding> judge)
            implements GateRule {
        @Override
        public Finding check(GateLook look) {
            return seen(look).map(judge).orElse(NO_LOG);
        }

        private Optional<Seen> seen(GateLook look) {
            return look.once(Log.class, this::read).seen;
        }

        @Override
        public Optional<SeenAt> seenAt(UUID projectId) {
            return Optional.of(new SeenAt("Day log", "/projects/" + projectId + "/day-log", May.SEE_CUTOVERS));
        }

        private Log read(ProjectFacts project) {
            return new Log(outages.liveOrDone(project.id())
                    .flatMap(window -> rows.ofWindow(window.id()))
                    .map(log -> new Seen(
                            new LogState(rows.steps(log.id()), rows.entries(log.id())),
                            new Readings(log.service(), log.generator(), false))));
        }
    }

    /** The day before, what is computed; on the day, what the person in charge told. */
    private record Reversal(LogRule log, DayBeforeReading before) implements GateRule {
        @Override
        public String item() {
            return log.item();
        }

        @Override
        public Finding check(GateLook look) {
            return log.seen(look)
                    .flatMap(seen -> seen.state().reversal())
                    .<Finding>map(LogGateRules::told)
                    .orElseGet(() -> notTold(before.reversal(look)));
        }

        @Override
        public Optional<SeenAt> seenAt(UUID projectId) {
            return log.seenAt(projectId);
        }
    }

    @Bean
    GateRule latestReversalTold(Outages outages, LogRows rows, DayBeforeReading before) {
        return new Reversal(new LogRule("cutover.13", outages, rows, seen -> NO_LOG), before);
    }

    @Bean
    GateRule readingsBefore(Outages outages, LogRows rows) {
        return new LogRule("cutover.15", outages, rows, LogGateRules::readingsBefore);
    }

    @Bean
    GateRule readyToLosePower(Outages outages, LogRows rows) {
        return new LogRule("cutover.16", outages, rows, seen -> signed(seen, Hold.H1, Set.of(AnswerKind.SIGNATURE)));
    }

    @Bean
    GateRule provedDead(Outages outages, LogRows rows) {
        return new LogRule(
                "cutover.17",
                outages,
                rows,
                seen -> signed(seen, Hold.H2, Set.of(AnswerKind.SIGNATURE, AnswerKind.READING)));
    }

    @Bean
    GateRule checkedBySecondPerson(Outages outages, LogRows rows) {
        return new LogRule("cutover.18", outages, rows, seen -> signed(seen, Hold.H3, Set.of(AnswerKind.SIGNATURE)));
    }

    @Bean
    GateRule voltageRight(Outages outages, LogRows rows) {
        return new LogRule("cutover.19", outages, rows, LogGateRules::voltageRight);
    }

    @Bean
    GateRule rotationAsBefore(Outages outages, LogRows rows) {
        return new LogRule("cutover.20", outages, rows, LogGateRules::rotationAsBefore);
    }

    @Bean
    GateRule criticalLoadsRun(Outages outages, LogRows rows) {
        return new LogRule("cutover.21", outages, rows, seen -> signed(seen, Hold.H5, Set.of(AnswerKind.SIGNATURE)));
    }

    @Bean
    GateRule minutesLogged(Outages outages, LogRows rows) {
        return new LogRule("cutover.22", outages, rows, LogGateRules::minutesLogged);
    }

    private static Finding told(ReversalTime latest) {
        return new Finding.Satisfied("The latest reversal was "
                + ClockWords.of(latest.latest().decideBy().toLocalTime()) + ": told by "
                + latest.entry().byName() + " in the day log.");
    }

    /** @param computed for the hour of the outage */
    static Finding notTold(Optional<Factor> computed) {
        if (computed.isPresent() && computed.get().isBroken()) {
            return new Finding.Broken(computed.get().sentence(), computed.get().cure());
        }
        return new Finding.CannotTell(
                "The latest reversal time is not in the day log."
                        + computed.map(factor -> " As computed: " + factor.sentence())
                                .orElse(""),
                "The person in charge sets it on the day, before anybody signs.");
    }

    private static Finding readingsBefore(Seen seen) {
        List<String> missing = new ArrayList<>();
        seen.readings().of("2").stream()
                .filter(Asked::required)
                .filter(asked -> seen.state().value("2", asked.quantity()).isEmpty())
                .forEach(asked -> missing.add(asked.words()));
        if (seen.state().doneAt("2").isEmpty() || !missing.isEmpty()) {
            return new Finding.CannotTell(
                    "The readings before are not in the log.",
                    missing.isEmpty() ? "Step 2 is not done." : "Missing: " + String.join(", ", missing) + ".");
        }
        return new Finding.Recorded("Read before: " + volts(seen, "2") + ".", Set.of(AnswerKind.READING));
    }

    private static Finding signed(Seen seen, Hold hold, Set<AnswerKind> holds) {
        if (seen.state().reversedAt().isPresent()) {
            return new Finding.Broken("The cutover was reversed.", "Choose another window.");
        }
        List<Hold.Part> unsigned = seen.state().unsigned(hold);
        if (!unsigned.isEmpty()) {
            return new Finding.CannotTell(
                    "Hold point " + hold + " is not signed in the day log.",
                    "Missing: "
                            + String.join(
                                    ", ",
                                    unsigned.stream().map(Hold.Part::words).toList()) + ".");
        }
        return new Finding.Recorded("Hold point " + hold + " is signed in the day log.", holds);
    }

    private static Finding voltageRight(Seen seen) {
        SupplyRestored restored = seen.readings().restored(seen.state());
        List<String> refusals = restored.refusals().stream()
                .filter(refusal -> !refusal.startsWith("The phases turn"))
                .toList();
        if (!refusals.isEmpty()) {
            return new Finding.Broken(refusals.get(0), "Open again and reverse.");
        }
        if (seen.state().signedAt(Hold.H4).isEmpty()) {
            return new Finding.CannotTell(
                    "Hold point H4 is not signed in the day log.",
                    "Read every pair after the utility closed, and sign.");
        }
        return new Finding.Recorded(
                "After the utility closed: " + volts(seen, Procedure.UTILITY_CLOSES) + ".", Set.of(AnswerKind.READING));
    }

    private static Finding rotationAsBefore(Seen seen) {
        if (!seen.readings().service().isThreePhase()) {
            return new Finding.Broken(
                    "The day log is of a single-phase service, the site has three phases.",
                    "Put the site right, or write the log anew.");
        }
        Optional<String> before = seen.state().value("2", Readings.ROTATION);
        Optional<String> after = seen.state().value(Procedure.UTILITY_CLOSES, Readings.ROTATION);
        if (before.isEmpty() || after.isEmpty()) {
            return new Finding.CannotTell(
                    "The rotation is not read before and after.", "Steps 2 and 10 of the day log.");
        }
        return before.equals(after)
                ? new Finding.Recorded("Rotation " + after.get() + ", as before.", Set.of(AnswerKind.READING))
                : new Finding.Broken(
                        "The phases turn " + after.get() + "; before the work they turned " + before.get() + ".",
                        "Open again and reverse.");
    }

    private static Finding minutesLogged(Seen seen) {
        return seen.state().outageMinutes().isPresent()
                        && seen.state().reversedAt().isEmpty()
                ? new Finding.Satisfied(
                        "The power was off for " + seen.state().outageMinutes().getAsInt() + " min.")
                : new Finding.Broken(
                        "The outage is not over in the day log.", "Sign hold point H5 when the critical loads run.");
    }

    private static String volts(Seen seen, String step) {
        return String.join(
                ", ",
                seen.readings().service().pairs().stream()
                        .map(Service.Pair::code)
                        .flatMap(
                                pair -> seen.state().value(step, pair).map(volts -> pair + " " + volts + " V").stream())
                        .toList());
    }
}
