package org.plumbrow.schedule.scenario;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.project.ProjectLimits;
import org.plumbrow.web.Entered;

/** A scenario as typed: what its kind does not need is not read. */
record ScenarioForm(
        @Nullable String name,
        @Nullable String kind,
        @Nullable String crew,
        @Nullable String machine,
        @Nullable String firstDay,
        @Nullable String days,
        @Nullable String mounting,
        @Nullable String kwDc,
        @Nullable String version) {

    private static final Range DAYS = new Range(1, 250, "working days");

    static ScenarioForm of(Scenario scenario) {
        ScenarioTerms terms = scenario.terms();
        return new ScenarioForm(
                terms.name(),
                terms.kind().name(),
                text(terms.crewId()),
                text(terms.machineId()),
                text(terms.firstDay()),
                text(terms.days()),
                terms.mounting() == null ? "" : terms.mounting().name(),
                terms.kwDc() == null ? "" : terms.kwDc().stripTrailingZeros().toPlainString(),
                Long.toString(scenario.version()));
    }

    private static String text(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }

    /** @return empty where something cannot be read, which is said at its field */
    Optional<ScenarioTerms> read(Entered typed, ScenarioChoices choices, LocalDate today) {
        String named = typed.given("name", "a name, for example Crew 2 ill for a week", name, 60);
        Optional<ScenarioKind> chosen = typed.choice("kind", ScenarioKind.class, kind);
        if (chosen.isEmpty()) {
            refuseOnce(typed, "kind", "Choose what is otherwise.");
            return Optional.empty();
        }
        ScenarioTerms terms = switch (chosen.get()) {
            case CREW_AWAY ->
                new ScenarioTerms(
                        named,
                        ScenarioKind.CREW_AWAY,
                        one(typed, "crew", crew, choices.crews()),
                        null,
                        day(typed, today),
                        length(typed),
                        null,
                        null);
            case CREW_MORE ->
                new ScenarioTerms(
                        named,
                        ScenarioKind.CREW_MORE,
                        one(typed, "crew", crew, choices.crews()),
                        null,
                        day(typed, today),
                        null,
                        null,
                        null);
            case MACHINE_AWAY ->
                new ScenarioTerms(
                        named,
                        ScenarioKind.MACHINE_AWAY,
                        null,
                        one(typed, "machine", machine, choices.machines()),
                        day(typed, today),
                        length(typed),
                        null,
                        null);
            case NEW_JOB -> job(typed, named);
        };
        return typed.errors().hasErrors() ? Optional.empty() : Optional.of(terms);
    }

    private ScenarioTerms job(Entered typed, String named) {
        Optional<Mounting> how = typed.choice("mounting", Mounting.class, mounting);
        if (how.isEmpty()) {
            refuseOnce(typed, "mounting", "Choose how the array is mounted.");
        }
        var size = typed.number("kwDc", "the size", kwDc, ProjectLimits.SYSTEM_KW);
        if (size == null) {
            refuseOnce(
                    typed, "kwDc", "Write the size as a number from " + Entered.hint(ProjectLimits.SYSTEM_KW) + " DC.");
        }
        return new ScenarioTerms(named, ScenarioKind.NEW_JOB, null, null, null, null, how.orElse(null), size);
    }

    private @Nullable LocalDate day(Entered typed, LocalDate today) {
        LocalDate day = typed.date("firstDay", "the first day", firstDay);
        if (day == null || day.isBefore(today)) {
            refuseOnce(typed, "firstDay", "Choose a first day from today on.");
        }
        return day;
    }

    private @Nullable Integer length(Entered typed) {
        Integer length = typed.whole("days", "how long", days, DAYS);
        if (length == null) {
            refuseOnce(typed, "days", "Write how long as a whole number from " + Entered.hint(DAYS) + ".");
        }
        return length;
    }

    private static @Nullable UUID one(Entered typed, String field, @Nullable String chosen, Map<UUID, String> known) {
        Optional<UUID> found = known.keySet().stream()
                .filter(id -> id.toString().equals(Entered.text(chosen)))
                .findFirst();
        if (found.isEmpty()) {
            refuseOnce(typed, field, "Choose one of the list.");
        }
        return found.orElse(null);
    }

    private static void refuseOnce(Entered typed, String field, String sentence) {
        if (!typed.errors().hasFieldErrors(field)) {
            typed.refuse(field, sentence);
        }
    }
}
