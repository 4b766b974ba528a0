package org.plumbrow.schedule.gaterule;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.plumbrow.schedule.PlannedDates;
import org.plumbrow.schedule.PublishedPlan;
import org.springframework.stereotype.Component;

/** When the permits are in hand: is a crew booked for all that crews have to do? The plan books the machines with it. */
@Component
class SomebodyIsBooked implements GateRule {

    private final PublishedPlan plan;
    private final Crews crews;
    private final Clock clock;

    SomebodyIsBooked(PublishedPlan plan, Crews crews, Clock clock) {
        this.plan = plan;
        this.crews = crews;
        this.clock = clock;
    }

    @Override
    public String item() {
        return "permitted.16";
    }

    @Override
    public Finding check(GateLook look) {
        UUID projectId = look.projectId();
        List<PlannedDates> work = plan.of(projectId).stream()
                .filter(dates -> dates.code().kind() == ActivityCode.Kind.CREW && !dates.isDone())
                .toList();
        if (work.isEmpty()) {
            return new Finding.Broken("Nobody is booked yet.", "Publish a plan that has this project.");
        }
        String without = String.join(", ", plan.crewWorkWithoutPlace(projectId));
        if (!without.isEmpty()) {
            return new Finding.Broken(
                    "No crew is booked for: " + without + ".",
                    "See the look-ahead: a crew with a skill it needs, or a machine, is missing.");
        }
        HalfDay first = work.stream()
                .map(PlannedDates::start)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        HalfDay last = work.stream()
                .map(PlannedDates::finish)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        return new Finding.Satisfied("%s booked from %s to %s, with the machines they need."
                .formatted(
                        names(look.project().branchId(), work), DayWords.of(first.date()), DayWords.of(last.date())));
    }

    private String names(UUID branch, List<PlannedDates> work) {
        Map<UUID, String> names = crews.crews(branch, LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC)).stream()
                .collect(Collectors.toMap(CrewFacts::id, CrewFacts::name));
        List<String> booked = work.stream()
                .flatMap(dates -> dates.crewId().stream())
                .map(id -> names.getOrDefault(id, "a crew"))
                .distinct()
                .sorted()
                .toList();
        String all = String.join(", ", booked);
        return booked.size() == 1 ? all + " is" : all + " are";
    }
}
