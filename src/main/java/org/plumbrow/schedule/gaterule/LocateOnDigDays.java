package org.plumbrow.schedule.gaterule;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.permit.Awaited;
import org.plumbrow.permit.AwaitedBook;
import org.plumbrow.permit.AwaitedKind;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.plumbrow.schedule.PlannedDates;
import org.plumbrow.schedule.PublishedPlan;
import org.springframework.stereotype.Component;

/** Is each day of digging, boring or driving posts covered by a locate ticket that was clear and had not expired? */
@Component
class LocateOnDigDays implements GateRule {

    private static final Set<ActivityCode> DIGS =
            Set.of(ActivityCode.FOUNDATION, ActivityCode.TRENCH, ActivityCode.BORE);

    private final PublishedPlan plan;
    private final AwaitedBook awaited;

    LocateOnDigDays(PublishedPlan plan, AwaitedBook awaited) {
        this.plan = plan;
        this.awaited = awaited;
    }

    @Override
    public String item() {
        return "installed.3";
    }

    @Override
    public Finding check(GateLook look) {
        List<PlannedDates> digs = plan.of(look.projectId()).stream()
                .filter(dates -> DIGS.contains(dates.code()))
                .toList();
        List<Awaited> tickets = awaited.ofUnchecked(look.projectId()).stream()
                .filter(one -> one.kind() == AwaitedKind.LOCATE)
                .toList();
        return judge(digs, tickets);
    }

    static Finding judge(List<PlannedDates> digs, List<Awaited> tickets) {
        if (digs.isEmpty()) {
            return new Finding.CannotTell(
                    "No plan has the days of digging yet.", "Publish a plan that has this project.");
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
}
