package org.plumbrow.schedule.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.project.ProjectFacts;

/**
 * A project with dates that differ between two plans.
 *
 * @param dates how many
 * @param last the latest of them, was → is
 * @param why what binds the first of them in the later plan; the others follow from it or from their own crew's work
 */
public record MovedProject(String project, String href, int dates, String last, String why) {

    /** By number of dates, most first. */
    public static List<MovedProject> in(PlanChanges changes, Map<UUID, ProjectFacts> facts) {
        Map<UUID, List<PlanChanges.Move>> byProject =
                changes.moves().stream().collect(Collectors.groupingBy(PlanChanges.Move::projectId));
        List<MovedProject> moved = new ArrayList<>();
        for (UUID id : changes.projects()) {
            ProjectFacts project = facts.get(id);
            if (project != null) {
                List<PlanChanges.Move> moves = byProject.getOrDefault(id, List.of());
                long gone = changes.gone().stream()
                        .filter(row -> row.projectId().equals(id))
                        .count();
                moved.add(new MovedProject(
                        project.name(),
                        "/projects/" + id + "/schedule",
                        moves.size() + (int) gone,
                        last(moves, gone),
                        why(moves)));
            }
        }
        moved.sort(Comparator.comparingInt(MovedProject::dates).reversed().thenComparing(MovedProject::project));
        return moved;
    }

    /** The latest of its moves says most: what follows from all others. */
    private static String last(List<PlanChanges.Move> moves, long gone) {
        return moves.stream()
                .max(Comparator.comparing(move -> move.now().finish()))
                .map(move -> "%s: %s"
                        .formatted(
                                move.now().title(),
                                move.was()
                                        .map(PlannedRow::finish)
                                        .filter(was -> !was.date()
                                                .equals(move.now().finish().date()))
                                        .map(was -> day(was) + " → "
                                                + day(move.now().finish()))
                                        .orElse(day(move.now().finish()))))
                .orElse(gone > 0 ? "no longer in the plan" : "");
    }

    private static String why(List<PlanChanges.Move> moves) {
        return moves.stream()
                .min(Comparator.comparing(move -> move.now().start()))
                .map(move -> move.now().title() + ": "
                        + (move.isOtherDays() ? move.now().boundSentence() : "Another crew does it on the same days."))
                .orElse("");
    }

    private static String day(HalfDay halfDay) {
        return DayWords.of(halfDay.date());
    }
}
