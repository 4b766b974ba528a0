package org.plumbrow.cutover;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Weekdays;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.calc.outage.WindowSearch.Candidate;
import org.plumbrow.web.Refusal;

/** What people write on the pages of an outage. Every field may be missing; the service says what is wrong. */
final class OutageForms {

    private OutageForms() {}

    /** Choosing or moving a window. */
    record WindowForm(
            @Nullable LocalDate day,

            @Nullable LocalTime start,

            @Nullable Integer outageMinutes,

            @Nullable UUID crewId,

            @Nullable LocalDate rainDay,
            @Nullable LocalTime rainStart,
            @Nullable String reason,
            @Nullable Long version) {

        static WindowForm of(Candidate candidate, int minutes, @Nullable Long version) {
            return new WindowForm(
                    candidate.day(),
                    candidate.start(),
                    minutes,
                    UUID.fromString(candidate.crewId()),
                    candidate.rainDate().map(rain -> rain.day()).orElse(null),
                    candidate.rainDate().map(rain -> rain.start()).orElse(null),
                    "",
                    version);
        }

        /** The same at an hour that was chosen from the ranked ones; what cannot be read changes nothing. */
        WindowForm at(@Nullable String chosen, @Nullable String hour, @Nullable String crew) {
            try {
                return chosen == null || hour == null
                        ? this
                        : new WindowForm(
                                LocalDate.parse(chosen),
                                LocalTime.parse(hour),
                                outageMinutes,
                                crew == null || crew.isEmpty() ? crewId : UUID.fromString(crew),
                                rainDay,
                                rainStart,
                                reason,
                                version);
            } catch (DateTimeParseException | IllegalArgumentException unreadable) {
                return this;
            }
        }

        Optional<OutageChoice> choice() {
            if (day == null || start == null || outageMinutes == null || crewId == null) {
                return Optional.empty();
            }
            return Optional.of(new OutageChoice(day, start, outageMinutes, crewId, rainDay, rainStart));
        }

        /** What no window can do without. */
        List<Refusal> missing() {
            List<Refusal> missing = new ArrayList<>();
            if (day == null) {
                missing.add(new Refusal("day", "Choose a day, for example 2027-03-26."));
            }
            if (start == null) {
                missing.add(new Refusal("start", "Write the time at which the power goes off, for example 09:00."));
            }
            if (outageMinutes == null) {
                missing.add(new Refusal("outageMinutes", "Write the minutes as a whole number from 15 to 720."));
            }
            if (crewId == null) {
                missing.add(new Refusal("crewId", "Choose a crew with a licensed electrician."));
            }
            return missing;
        }

        String reasonText() {
            return reason == null ? "" : reason;
        }
    }

    /** Cancelling. */
    record CancelForm(@Nullable String reason, @Nullable Long version) {
        String reasonText() {
            return reason == null ? "" : reason;
        }
    }

    /** What the utility was told and what it said. */
    record UtilityForm(
            @Nullable LocalDate toldOn,
            @Nullable String how,
            @Nullable String number) {}

    /** What the customer was told and what they said; answer AGREED, DOES_NOT_WORK or nothing. */
    record CustomerForm(
            @Nullable LocalDate toldOn,
            @Nullable String how,
            @Nullable String answer,
            @Nullable String note) {}

    /** When the customer must have power. */
    record BlackoutForm(
            @Nullable LocalDate first,
            @Nullable LocalDate last,
            @Nullable List<DayOfWeek> weekdays,
            @Nullable LocalTime from,
            @Nullable LocalTime to,
            @Nullable String reason) {

        static BlackoutForm empty() {
            return new BlackoutForm(null, null, List.of(DayOfWeek.values()), null, null, "");
        }

        Blackouts.Row row(String by) {
            EnumSet<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
            days.addAll(weekdays == null || weekdays.isEmpty() ? List.of(DayOfWeek.values()) : weekdays);
            return new Blackouts.Row(
                    UUID.randomUUID(),
                    first,
                    last,
                    new Weekdays(days),
                    from,
                    to,
                    reason == null ? "" : reason.strip(),
                    by);
        }
    }

    /** What is done while the power is off. */
    record WorkForm(
            @Nullable List<String> parts,
            @Nullable Integer meters,
            @Nullable Integer plannedMinutes,
            @Nullable LocalDate readyOn,
            @Nullable String readyAfter,
            @Nullable Set<EquipmentKind> equipment,
            @Nullable Long version) {

        static final List<String> PARTS =
                List.of("mainPanel", "meterBase", "newTransformer", "currentTransformers", "oldGear");

        static WorkForm of(WorkContent content) {
            List<String> parts = new ArrayList<>();
            add(parts, "mainPanel", content.mainPanel());
            add(parts, "meterBase", content.meterBase());
            add(parts, "newTransformer", content.newTransformer());
            add(parts, "currentTransformers", content.currentTransformers());
            add(parts, "oldGear", content.oldGear());
            return new WorkForm(
                    parts,
                    content.meters(),
                    content.plannedMinutes(),
                    content.readyOn(),
                    content.readyAfter(),
                    content.equipment(),
                    content.version());
        }

        private static void add(List<String> parts, String part, boolean there) {
            if (there) {
                parts.add(part);
            }
        }

        WorkContent content() {
            List<String> all = parts == null ? List.of() : parts;
            return new WorkContent(
                    all.contains("mainPanel"),
                    all.contains("meterBase"),
                    all.contains("newTransformer"),
                    all.contains("currentTransformers"),
                    meters == null ? 1 : meters,
                    all.contains("oldGear"),
                    plannedMinutes,
                    readyOn,
                    readyAfter == null ? "" : readyAfter.strip(),
                    equipment == null ? Set.of() : equipment,
                    version == null ? 0 : version);
        }
    }
}
