package org.plumbrow.permit;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.PlanningSettings;
import org.plumbrow.calc.calendar.WorkingCalendar;
import org.plumbrow.calc.duration.DurationTables;
import org.plumbrow.calc.duration.WaitTime;
import org.plumbrow.calc.leadtime.LeadTimeLearning;
import org.plumbrow.calc.leadtime.LearnedLeadTime;
import org.plumbrow.project.ProjectFacts;

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
    record Named(String who, LearnedLeadTime time) {

        WaitTime row() {
            WaitTime row = time.row();
            return new WaitTime(
                    row.code(),
                    time.table().words().endsWith(", " + who) ? row.words() : row.words() + ", " + who,
                    row.dayKind(),
                    row.days(),
                    row.meanDays(),
                    row.shape(),
                    row.source());
        }
    }

    private final DurationTables table;
    private final Map<UUID, DurationTables> offices = new HashMap<>();
    private final Map<UUID, WorkingCalendar> utilities = new HashMap<>();
    private final WorkingCalendar branch;
    private final Map<Of, Named> learned = new LinkedHashMap<>();

    LeadTimes(PlanningSettings settings, List<Awaited> came) {
        table = settings.durations();
        settings.permitOffices().forEach(office -> offices.put(office.id(), table.with(office.waits(table))));
        settings.utilities().forEach(utility -> utilities.put(utility.id(), utility.calendar()));
        branch = settings.branch().calendar();
        Map<Of, List<Double>> days = new LinkedHashMap<>();
        Map<Of, Awaited> first = new HashMap<>();
        for (Awaited one : came) {
            if (one.sentOn() != null && one.receivedOn() != null) {
                days.computeIfAbsent(Of.of(one), key -> new ArrayList<>())
                        .add(taken(one, one.sentOn(), one.receivedOn()));
                first.putIfAbsent(Of.of(one), one);
            }
        }
        first.forEach((of, one) ->
                learned.put(of, new Named(one.who(), LeadTimeLearning.of(row(one), days.getOrDefault(of, List.of())))));
    }

    /** What is believed of whoever owes it before the first answer. */
    private WaitTime row(Awaited one) {
        UUID office = one.permitOfficeId();
        return (office == null ? table : offices.getOrDefault(office, table)).wait(one.waitCode());
    }

    /** The day of the question does not count. */
    private double taken(Awaited one, LocalDate sent, LocalDate received) {
        return row(one).dayKind() == WaitTime.DayKind.CALENDAR
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
    LearnedLeadTime of(Awaited one) {
        Named known = learned.get(Of.of(one));
        return known == null ? LeadTimeLearning.of(row(one), List.of()) : known.time();
    }

    /** Rows of those who answer this project's questions: its utility, its permit office, and whom it has asked by name. */
    List<WaitTime> rowsOf(ProjectFacts project, List<Awaited> asked) {
        Set<Of> whose = asked.stream().map(Of::of).collect(Collectors.toSet());
        Set<String> ids = Stream.of(project.site().utilityId(), project.site().permitOfficeId())
                .filter(Objects::nonNull)
                .map(UUID::toString)
                .collect(Collectors.toSet());
        return learned.entrySet().stream()
                .filter(one -> ids.contains(one.getKey().who()) || whose.contains(one.getKey()))
                .map(one -> one.getValue().row())
                .toList();
    }

    /** @return the day so many days after it was asked for; null while it is not */
    @Nullable
    LocalDate after(Awaited one, int days) {
        if (one.sentOn() == null) {
            return null;
        }
        return row(one).dayKind() == WaitTime.DayKind.CALENDAR
                ? one.sentOn().plusDays(days)
                : calendar(one).after(one.sentOn(), days);
    }
}
