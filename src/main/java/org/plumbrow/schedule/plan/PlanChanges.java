package org.plumbrow.schedule.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.ActivityCode;
import org.plumbrow.schedule.plan.PlannedPromise.Outlook;

/**
 * What is different between two plans of a branch, the published one and the one that may follow it.
 *
 * @param moves activities whose days or crew differ, or that have a place for the first time
 * @param gone activities that have no place any more
 * @param breaking promises that the later plan breaks and the earlier did not, or by less
 * @param mended promises that the earlier plan broke and the later keeps
 */
public record PlanChanges(
        List<Move> moves, List<PlannedRow> gone, List<PlannedPromise> breaking, List<PlannedPromise> mended) {

    /** @param was empty for an activity that was not planned before */
    public record Move(Optional<PlannedRow> was, PlannedRow now) {

        public UUID projectId() {
            return now.projectId();
        }

        public boolean isNew() {
            return was.isEmpty();
        }

        /** Whether it was to begin or is to begin by then. */
        boolean isWithin(HalfDay until) {
            return !now.start().isAfter(until)
                    || was.filter(before -> !before.start().isAfter(until)).isPresent();
        }

        /** Whether its day was one that people had agreed on. */
        boolean wasSettled() {
            return now.isPinned() || was.filter(PlannedRow::isPinned).isPresent();
        }

        /** Whether other days, not only another crew. */
        public boolean isOtherDays() {
            return was.map(before -> !before.start().equals(now.start())
                            || !before.finish().equals(now.finish()))
                    .orElse(true);
        }
    }

    /** @param from half-day of the later plan: what began before then did not move, it went on */
    static PlanChanges between(Snapshot before, Snapshot after, HalfDay from) {
        Map<UUID, PlannedRow> was = byActivity(before.rows);
        Map<UUID, PlannedRow> now = byActivity(after.rows);
        List<Move> moves = new ArrayList<>();
        for (PlannedRow row : after.rows) {
            Optional<PlannedRow> old = Optional.ofNullable(was.get(row.activityId()));
            if (!row.isDone() && old.filter(other -> goesOn(other, row, from)).isEmpty()) {
                moves.add(new Move(old, row));
            }
        }
        List<PlannedRow> gone = before.rows.stream()
                .filter(row -> !row.isDone() && !now.containsKey(row.activityId()))
                .toList();
        return new PlanChanges(
                moves, gone, worse(before.promises, after.promises), better(before.promises, after.promises));
    }

    /** The rows and promises of one plan. */
    record Snapshot(List<PlannedRow> rows, List<PlannedPromise> promises) {
        Snapshot without(UUID projectId) {
            return new Snapshot(
                    rows.stream()
                            .filter(row -> !row.projectId().equals(projectId))
                            .toList(),
                    promises.stream()
                            .filter(promise -> !promise.projectId().equals(projectId))
                            .toList());
        }
    }

    /** The same place; of an activity under way the start is only where the rest is counted from. */
    private static boolean goesOn(PlannedRow was, PlannedRow now, HalfDay from) {
        boolean begun = was.start().isBefore(from) && !now.start().isAfter(from);
        return now.standsAs(was)
                || begun && was.finish().equals(now.finish()) && was.crewId().equals(now.crewId());
    }

    private static Map<UUID, PlannedRow> byActivity(List<PlannedRow> rows) {
        return rows.stream().collect(Collectors.toMap(PlannedRow::activityId, Function.identity()));
    }

    private static List<PlannedPromise> worse(List<PlannedPromise> before, List<PlannedPromise> after) {
        Map<UUID, Integer> late = new HashMap<>();
        before.forEach(promise -> late.put(promise.projectId(), promise.halfDaysLate()));
        return after.stream()
                .filter(promise -> promise.halfDaysLate() > late.getOrDefault(promise.projectId(), 0))
                .toList();
    }

    private static List<PlannedPromise> better(List<PlannedPromise> before, List<PlannedPromise> after) {
        Set<UUID> broken = before.stream()
                .filter(promise -> promise.outlook() == Outlook.BREAKS)
                .map(PlannedPromise::projectId)
                .collect(Collectors.toSet());
        return after.stream()
                .filter(promise -> broken.contains(promise.projectId())
                        && promise.halfDaysLate() == 0
                        && promise.finish().isPresent())
                .toList();
    }

    public boolean isNothing() {
        return moves.isEmpty() && gone.isEmpty() && breaking.isEmpty() && mended.isEmpty();
    }

    /** Projects with any change, in the order of the moves. */
    public List<UUID> projects() {
        return java.util.stream.Stream.concat(
                        moves.stream().map(Move::projectId), gone.stream().map(PlannedRow::projectId))
                .distinct()
                .toList();
    }

    /** Crews whose work is another one within so many days: they have to be told. */
    public Set<UUID> crewsToTell(HalfDay until) {
        return moves.stream()
                .flatMap(move ->
                        java.util.stream.Stream.concat(move.was().stream(), java.util.stream.Stream.of(move.now())))
                .filter(row -> !row.start().isAfter(until))
                .flatMap(row -> row.crewId().stream())
                .collect(Collectors.toSet());
    }

    /** Projects whose customer has to be told of a day that they live by. @param today of the later plan */
    public Set<UUID> customersToTell(HalfDay today) {
        return customerMoves(today).stream().map(Move::projectId).collect(Collectors.toSet());
    }

    /**
     * What customers have to be told of: other days for what they live by, within the next weeks, or at any distance where
     * the day was settled with them or their promise breaks (or breaks by more). What else lies far ahead moves again
     * before it matters to anybody.
     */
    List<Move> customerMoves(HalfDay today) {
        return toTell(today, CustomerDatesTable.CODES);
    }

    /** What utilities have to be told of: other days of a switch-off, as near as for customers. */
    List<Move> utilityMoves(HalfDay today) {
        return toTell(today, Set.of(ActivityCode.CUTOVER));
    }

    private List<Move> toTell(HalfDay today, Set<ActivityCode> codes) {
        HalfDay until = HalfDay.afternoon(today.date().plusWeeks(CustomerDatesTable.WEEKS_TOLD));
        Set<UUID> broken = breaking.stream().map(PlannedPromise::projectId).collect(Collectors.toSet());
        return moves.stream()
                .filter(Move::isOtherDays)
                .filter(move -> codes.contains(move.now().code()))
                .filter(move -> broken.contains(move.projectId()) || move.isWithin(until) || move.wasSettled())
                .toList();
    }
}
