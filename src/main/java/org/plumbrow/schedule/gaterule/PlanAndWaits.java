package org.plumbrow.schedule.gaterule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.permit.Awaited;
import org.plumbrow.permit.AwaitedKind;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.schedule.PlannedDates;

/** What a project waits for, held against the days of its plan. Pure. */
final class PlanAndWaits {

    private static final Set<ActivityCode> DIGS =
            Set.of(ActivityCode.FOUNDATION, ActivityCode.TRENCH, ActivityCode.BORE);

    /** What uses a delivery first. */
    private static final Map<AwaitedKind, ActivityCode> USED_BY = new EnumMap<>(Map.of(
            AwaitedKind.RACKING_DELIVERY, ActivityCode.RACKING,
            AwaitedKind.MODULES_DELIVERY, ActivityCode.MODULES,
            AwaitedKind.INVERTERS_DELIVERY, ActivityCode.INVERTERS,
            AwaitedKind.GEAR_DELIVERY, ActivityCode.AC_GEAR));

    private PlanAndWaits() {}

    /** Does no permit end before the plan's last work that needs it? */
    static Finding permitsOutlastTheWork(List<PlannedDates> plan, List<Awaited> waits) {
        Optional<LocalDate> end = plan.stream()
                .filter(dates -> dates.code() != ActivityCode.HAND_OVER)
                .map(dates -> dates.finish().date())
                .max(LocalDate::compareTo);
        if (end.isEmpty()) {
            return noPlan("this project");
        }
        List<Awaited> permits = Stream.of(AwaitedKind.PERMIT, AwaitedKind.BUILDING_PERMIT, AwaitedKind.ZONING)
                .flatMap(kind -> of(waits, kind).stream())
                .filter(Awaited::isGood)
                .toList();
        Optional<Awaited> open =
                permits.stream().filter(one -> one.expiresOn() == null).findFirst();
        if (permits.isEmpty() || open.isPresent()) {
            return new Finding.CannotTell(
                    open.map(one -> one.what() + ": its last day is not written down.")
                            .orElse("No permit has come yet."),
                    "Write the last day on which it counts on the page of waits.");
        }
        return permits.stream()
                .filter(one -> one.hasExpired(end.get()))
                .findFirst()
                .<Finding>map(one -> new Finding.Broken(
                        "%s ends before the plan does, on %s.".formatted(one.what(), DayWords.withYear(end.get())),
                        "Ask for more time, or plan the work earlier."))
                .orElseGet(() -> new Finding.Satisfied(
                        "Each permit counts until the plan’s end, " + DayWords.withYear(end.get()) + ", or longer."));
    }

    /** Is everything ordered that the plan uses, and needed no later than on the day of its first use? */
    static Finding deliveriesComeBeforeUse(List<PlannedDates> plan, List<Awaited> waits) {
        List<String> late = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        USED_BY.forEach((kind, use) -> firstDay(plan, Set.of(use)).ifPresent(first -> {
            List<Awaited> orders = of(waits, kind);
            if (orders.isEmpty()) {
                unknown.add(kind.words() + " is not written down");
            }
            for (Awaited order : orders) {
                String lack = lack(order, first);
                (order.isOpen() && order.shouldComeOn().isPresent() ? late : unknown).add(lack);
            }
        }));
        late.removeIf(String::isEmpty);
        unknown.removeIf(String::isEmpty);
        if (!late.isEmpty()) {
            return new Finding.Broken(
                    String.join("; ", late) + ".", "Have it come earlier, or plan the work that uses it later.");
        }
        if (!unknown.isEmpty() || plan.isEmpty()) {
            return plan.isEmpty()
                    ? noPlan("this project")
                    : new Finding.CannotTell(
                            String.join("; ", unknown) + ".",
                            "Write orders and the days they are needed on the page of waits.");
        }
        return new Finding.Satisfied("Everything that the plan uses is ordered for no later than its first use.");
    }

    /** What speaks against an order; empty where nothing does. */
    private static String lack(Awaited order, LocalDate firstUse) {
        if (!order.isOpen()) {
            return "";
        }
        if (order.sentOn() == null) {
            return order.what() + " is not ordered";
        }
        return order.shouldComeOn()
                .map(day -> day.isAfter(firstUse)
                        ? "%s comes %s, its first use is planned for %s"
                                .formatted(order.what(), DayWords.withYear(day), DayWords.withYear(firstUse))
                        : "")
                .orElse(order.what() + " has no day by which it is needed");
    }

    /** Is a ticket asked for, or noted, that is there by the first day of digging and lasts to the last? */
    static Finding locateIsPlanned(List<PlannedDates> plan, List<Awaited> waits) {
        List<PlannedDates> digs = digs(plan);
        Optional<LocalDate> first = firstDay(digs, DIGS);
        if (first.isEmpty()) {
            return noPlan("the days of digging");
        }
        LocalDate last = digs.stream()
                .map(dig -> dig.finish().date())
                .max(LocalDate::compareTo)
                .orElseThrow();
        List<Awaited> tickets = of(waits, AwaitedKind.LOCATE);
        String days =
                "digging is planned from %s to %s".formatted(DayWords.withYear(first.get()), DayWords.withYear(last));
        if (tickets.stream()
                .noneMatch(one -> one.receivedOn() != null || one.shouldComeOn().isPresent())) {
            return new Finding.CannotTell(
                    "No locate ticket has a day; " + days + ".", "Write on the page of waits by when it is needed.");
        }
        boolean inTime = tickets.stream().anyMatch(one -> !comes(one).isAfter(first.get()));
        boolean lasts = tickets.stream().anyMatch(one -> one.expiresOn() == null || !one.hasExpired(last));
        return inTime && lasts
                ? new Finding.Satisfied("A locate ticket is planned for it: " + days + ".")
                : new Finding.Broken(
                        (inTime ? "The locate ticket ends too early: " : "The locate ticket comes too late: ") + days
                                + ".",
                        "Ask for it earlier, or for one more that follows it.");
    }

    private static LocalDate comes(Awaited ticket) {
        return Optional.ofNullable(ticket.receivedOn()).or(ticket::shouldComeOn).orElse(LocalDate.MAX);
    }

    /** Is each day of digging, boring or driving posts covered by a ticket that was clear and had not expired? */
    static Finding locateIsClear(List<PlannedDates> plan, List<Awaited> waits) {
        List<PlannedDates> digs = digs(plan);
        List<Awaited> tickets = of(waits, AwaitedKind.LOCATE);
        if (digs.isEmpty()) {
            return noPlan("the days of digging");
        }
        if (tickets.isEmpty()) {
            return new Finding.CannotTell(
                    "No locate ticket is written down.", "Write it on the page of waits, with its last day.");
        }
        String bare = digs.stream()
                .flatMap(dig ->
                        uncovered(dig, tickets).stream().map(day -> dig.words() + " on " + DayWords.withYear(day)))
                .collect(Collectors.joining(", "));
        return bare.isEmpty()
                ? new Finding.Satisfied(
                        "Each day of digging lies within a clear ticket. Look at the marks all the same.")
                : new Finding.Broken(
                        "No clear locate ticket for: " + bare + ".",
                        "Nobody digs, bores or drives posts on such a day: have the ticket cleared or renewed first.");
    }

    /** The first such day, from its first to its last, days off included: marks must hold from one to the other. */
    private static Optional<LocalDate> uncovered(PlannedDates dig, List<Awaited> tickets) {
        return dig.start()
                .date()
                .datesUntil(dig.finish().date().plusDays(1))
                .filter(day -> tickets.stream().noneMatch(ticket -> ticket.isClearOn(day)))
                .findFirst();
    }

    private static Finding noPlan(String what) {
        return new Finding.CannotTell("No plan has " + what + " yet.", "Publish a plan that has this project.");
    }

    private static List<PlannedDates> digs(List<PlannedDates> plan) {
        return plan.stream().filter(dates -> DIGS.contains(dates.code())).toList();
    }

    private static Optional<LocalDate> firstDay(List<PlannedDates> plan, Set<ActivityCode> codes) {
        return plan.stream()
                .filter(dates -> codes.contains(dates.code()))
                .map(dates -> dates.start().date())
                .min(LocalDate::compareTo);
    }

    private static List<Awaited> of(List<Awaited> waits, AwaitedKind kind) {
        return waits.stream().filter(one -> one.kind() == kind).toList();
    }
}
