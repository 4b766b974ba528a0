package org.plumbrow.permit;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.duration.WaitTime;
import org.plumbrow.calc.leadtime.LeadTimeLearning;
import org.plumbrow.calc.leadtime.LearnedLeadTime;

/** How long each office, utility and supplier of a branch takes, from what it answered. Pure. */
final class LeadTimes {

    /** Whose, and of which row of the table. */
    record Of(String who, String waitCode) {
        static Of of(Awaited one) {
            UUID id = one.utilityId() == null ? one.permitOfficeId() : one.utilityId();
            return new Of(
                    id == null ? one.owedBy() + one.owedName().toLowerCase(Locale.ROOT) : id.toString(),
                    one.waitCode());
        }
    }

    /** A learned one, with a name for people. */
    record Named(String who, LearnedLeadTime time) {}

    private final Map<String, WaitTime> table = new HashMap<>();
    private final Map<UUID, WorkingCalendar> utilities = new HashMap<>();
    private final WorkingCalendar branch;
    private final Map<Of, Named> learned = new LinkedHashMap<>();

    LeadTimes(List<WaitTime> waits, WorkingCalendar branch, List<UtilityFacts> utilities, List<Awaited> came) {
        waits.forEach(wait -> table.put(wait.code(), wait));
        utilities.forEach(utility -> this.utilities.put(utility.id(), utility.calendar()));
        this.branch = branch;
        Map<Of, List<Double>> days = new LinkedHashMap<>();
        Map<Of, String> names = new HashMap<>();
        for (Awaited one : came) {
            if (one.sentOn() != null && one.receivedOn() != null && table.containsKey(one.waitCode())) {
                days.computeIfAbsent(Of.of(one), key -> new java.util.ArrayList<>())
                        .add(taken(one, one.sentOn(), one.receivedOn()));
                names.putIfAbsent(Of.of(one), one.who());
            }
        }
        days.forEach((of, all) -> learned.put(
                of, new Named(names.getOrDefault(of, ""), LeadTimeLearning.of(table.get(of.waitCode), all))));
    }

    /** The day of the question does not count. */
    private double taken(Awaited one, LocalDate sent, LocalDate received) {
        return table.get(one.waitCode()).dayKind() == WaitTime.DayKind.CALENDAR
                ? ChronoUnit.DAYS.between(sent, received)
                : sent.equals(received) ? 0 : calendar(one).workingDaysIn(sent.plusDays(1), received);
    }

    private WorkingCalendar calendar(Awaited one) {
        return one.utilityId() == null ? branch : utilities.getOrDefault(one.utilityId(), branch);
    }

    List<Named> learned() {
        return List.copyOf(learned.values());
    }

    /** Of whom and what it is; without any answer the table's. */
    Optional<LearnedLeadTime> of(Awaited one) {
        WaitTime row = table.get(one.waitCode());
        Named known = learned.get(Of.of(one));
        return known != null
                ? Optional.of(known.time())
                : Optional.ofNullable(row).map(wait -> LeadTimeLearning.of(wait, List.of()));
    }

    /** @return the day so many days after it was asked for; null while it is not */
    @Nullable
    LocalDate after(Awaited one, int days) {
        if (one.sentOn() == null) {
            return null;
        }
        return table.get(one.waitCode()).dayKind() == WaitTime.DayKind.CALENDAR
                ? one.sentOn().plusDays(days)
                : calendar(one).after(one.sentOn(), days);
    }
}
