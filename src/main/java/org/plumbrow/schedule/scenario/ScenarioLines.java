package org.plumbrow.schedule.scenario;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.schedule.plan.BranchVariants.Outcome;
import org.plumbrow.schedule.plan.PlanChanges;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.Telling;

/** Says what comes of a scenario. */
record ScenarioLines(Telling telling) {

    ScenarioView of(String name, List<String> what, String href, Outcome outcome) {
        PlanChanges changes = outcome.changes();
        HalfDay until = telling.until();
        long moved = changes.moves().stream()
                .filter(move -> !move.now().start().isAfter(until)
                        || move.was().filter(was -> !was.start().isAfter(until)).isPresent())
                .map(PlanChanges.Move::projectId)
                .collect(Collectors.toSet())
                .size();
        return new ScenarioView(
                name,
                what,
                href,
                outcome.kept(),
                outcome.broken(),
                outcome.halfDaysLate(),
                (int) moved,
                changes.breaking().stream()
                        .sorted(worstFirst())
                        .map(this::breaks)
                        .toList(),
                changes.mended().stream()
                        .map(promise -> project(promise.projectId()))
                        .sorted()
                        .toList(),
                telling.of(changes));
    }

    private Comparator<PlannedPromise> worstFirst() {
        return Comparator.comparing((PlannedPromise promise) -> promise.finish().isPresent())
                .thenComparing(promise -> -promise.halfDaysLate())
                .thenComparing(promise -> project(promise.projectId()));
    }

    private String breaks(PlannedPromise promise) {
        String late = promise.finish().isEmpty()
                ? "no date"
                : promise.daysLate() == 1 ? "1 working day late" : promise.daysLate() + " working days late";
        return project(promise.projectId()) + ", " + late;
    }

    private String project(UUID id) {
        return Optional.ofNullable(telling.projects().get(id))
                .map(ProjectFacts::name)
                .orElse("");
    }
}
