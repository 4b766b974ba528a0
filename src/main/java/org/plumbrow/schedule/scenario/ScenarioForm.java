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

/** One thing that is otherwise, as typed: what its kind does not need is not read. */
record ScenarioForm(
        @Nullable String kind,
        @Nullable String name,
        @Nullable String crew,
        @Nullable String machine,
        @Nullable String work,
        @Nullable String firstDay,
        @Nullable String days,
        @Nullable String mounting,
        @Nullable String kwDc) {

    private static final Range DAYS = new Range(1, 250, "working days");
    private static final Range SATURDAYS = new Range(1, 52, "Saturdays");
    private static final String NOTHING = "";

    static ScenarioForm blank(ScenarioKind kind, LocalDate today) {
        return new ScenarioForm(
                kind.name(),
                NOTHING,
                NOTHING,
                NOTHING,
                NOTHING,
                today.toString(),
                kind == ScenarioKind.SATURDAYS ? "4" : "5",
                NOTHING,
                NOTHING);
    }

    /** Of an address that nobody wrote by hand the kind is known. */
    ScenarioKind chosen() {
        return kindOf(kind);
    }

    static ScenarioKind kindOf(@Nullable String kind) {
        for (ScenarioKind one : ScenarioKind.values()) {
            if (one.name().equals(kind)) {
                return one;
            }
        }
        return ScenarioKind.CREW_AWAY;
    }

    /** @return empty where something cannot be read, which is said at its field */
    Optional<ScenarioTerms> read(Entered typed, ScenarioChoices choices, LocalDate today) {
        ScenarioKind what = chosen();
        ScenarioTerms terms = new ScenarioTerms(
                what,
                what.needs(ScenarioField.NAME) ? typed.given("name", "a name, for example Crew 5", name, 60) : NOTHING,
                what.needs(ScenarioField.CREW) ? one(typed, "crew", crew, choices.crews()) : null,
                what.needs(ScenarioField.MACHINE) ? one(typed, "machine", machine, choices.machines()) : null,
                what.needs(ScenarioField.WORK) ? one(typed, "work", work, choices.works()) : null,
                what.needs(ScenarioField.FIRST_DAY) ? day(typed, today) : null,
                what.needs(ScenarioField.DAYS)
                        ? length(typed, what == ScenarioKind.SATURDAYS ? SATURDAYS : DAYS)
                        : null,
                what.needs(ScenarioField.JOB) ? mounting(typed) : null,
                what.needs(ScenarioField.JOB) ? size(typed) : null);
        return typed.errors().hasErrors() ? Optional.empty() : Optional.of(terms);
    }

    private @Nullable Mounting mounting(Entered typed) {
        Optional<Mounting> how = typed.choice("mounting", Mounting.class, mounting);
        if (how.isEmpty()) {
            refuseOnce(typed, "mounting", "Choose how the array is mounted.");
        }
        return how.orElse(null);
    }

    private java.math.@Nullable BigDecimal size(Entered typed) {
        var size = typed.number("kwDc", "the size", kwDc, ProjectLimits.SYSTEM_KW);
        if (size == null) {
            refuseOnce(
                    typed, "kwDc", "Write the size as a number from " + Entered.hint(ProjectLimits.SYSTEM_KW) + " DC.");
        }
        return size;
    }

    private @Nullable LocalDate day(Entered typed, LocalDate today) {
        LocalDate day = typed.date("firstDay", "the first day", firstDay);
        if (day == null || day.isBefore(today) || day.isAfter(today.plusYears(2))) {
            refuseOnce(typed, "firstDay", "Choose a first day from today on, within two years.");
        }
        return day;
    }

    private @Nullable Integer length(Entered typed, Range range) {
        Integer length = typed.whole("days", "how long", days, range);
        if (length == null) {
            refuseOnce(typed, "days", "Write how long as a whole number from " + Entered.hint(range) + ".");
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
