package org.plumbrow.schedule.lookahead;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.planning.IdleGap;
import org.plumbrow.crew.Away;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.EquipmentFacts;
import org.plumbrow.schedule.lookahead.Lanes.Piece;
import org.plumbrow.schedule.lookahead.LookAheadView.Row;
import org.plumbrow.schedule.plan.MachineBooking;
import org.plumbrow.schedule.plan.PlannedRow;

/** The rows of the grid: crews with what they do, and shared machines with where they stand. */
final class CrewRows {

    /** Shorter idle times are not worth a box. */
    private static final int IDLE_FROM_HALF_DAYS = 2;

    private final Sheet sheet;
    private final DayColumns columns;
    private final Bars crewBars;
    private final Bars machineBars;

    CrewRows(Sheet sheet, Bars crewBars, Bars machineBars) {
        this.sheet = sheet;
        columns = sheet.columns();
        this.crewBars = crewBars;
        this.machineBars = machineBars;
    }

    List<Row> crews(List<IdleGap> idle) {
        List<Row> rows = new ArrayList<>();
        for (CrewFacts crew : sheet.crews()) {
            List<Piece> behind = new ArrayList<>();
            crew.away().forEach(time -> behind.add(away(crew.name(), time)));
            idle.stream()
                    .filter(gap -> gap.crewId().equals(crew.id().toString()) && gap.halfDays() >= IDLE_FROM_HALF_DAYS)
                    .forEach(gap -> behind.add(idle(crew.name(), gap)));
            behind.addAll(closed());
            rows.add(new Row(
                    crew.id(),
                    crew.name(),
                    crew.size() + (crew.size() == 1 ? " person" : " people"),
                    Optional.of("/crews/" + crew.id() + "/week"),
                    Lanes.of(columns.halfDays(), crewBars.of(sheet.bookedFor(crew.id())), clipped(behind))));
        }
        return rows;
    }

    List<Row> machines() {
        Map<UUID, PlannedRow> rows = sheet.plan().byActivity();
        return sheet.people().equipment().stream()
                .filter(machine -> machine.until()
                        .filter(last -> last.isBefore(columns.first()))
                        .isEmpty())
                .map(machine -> machine(machine, rows))
                .toList();
    }

    private Row machine(EquipmentFacts machine, Map<UUID, PlannedRow> rows) {
        List<PlannedRow> booked = sheet.plan().machines().stream()
                .filter(booking ->
                        booking.machineId().filter(machine.id()::equals).isPresent())
                .map(MachineBooking::activityId)
                .filter(rows::containsKey)
                .map(rows::get)
                .toList();
        List<Piece> behind = new ArrayList<>();
        machine.away().forEach(time -> behind.add(away(machine.name(), time)));
        behind.addAll(closed());
        return new Row(
                machine.id(),
                machine.name(),
                "shared",
                Optional.empty(),
                Lanes.of(columns.halfDays(), machineBars.of(booked), clipped(behind)));
    }

    private Piece away(String who, Away time) {
        int from = columns.at(time.first());
        int to = columns.behind(time.last());
        String reason = time.reason().words();
        return new Piece(
                from,
                to,
                Cell.Kind.AWAY,
                Face.of(
                        reason.length() * 7 + 12 < (to - from) * columns.span().halfDayPx() ? reason : "",
                        "%s away, %s, %s".formatted(who, time.words(), CrewBars.span(time.first(), time.last())),
                        Optional.empty()));
    }

    private Piece idle(String who, IdleGap gap) {
        int from = columns.at(gap.first());
        int to = columns.behind(gap.last());
        String days = LookAheadWords.inDays(gap.halfDays());
        return new Piece(
                from,
                to,
                Cell.Kind.IDLE,
                Face.of(
                        to - from >= 6 ? "idle " + days + " d" : days,
                        "%s idle %s, %s"
                                .formatted(
                                        who,
                                        LookAheadWords.workingDays(gap.halfDays()),
                                        CrewBars.span(gap.first(), gap.last())),
                        Optional.empty()));
    }

    private List<Piece> closed() {
        List<Piece> closed = new ArrayList<>();
        for (int column = 0; column < columns.days().size(); column++) {
            int place = 2 * column;
            columns.days()
                    .get(column)
                    .closed()
                    .ifPresent(why -> closed.add(
                            new Piece(place, place + 2, Cell.Kind.CLOSED, Face.of("", why, Optional.empty()))));
        }
        return closed;
    }

    private static List<Piece> clipped(List<Piece> pieces) {
        return pieces.stream().filter(piece -> piece.from() < piece.to()).toList();
    }

    /** Of all crews from the plan's first day on: how many half-days they could work. */
    int crewHalfDays() {
        int all = 0;
        HalfDay from = sheet.plan().head().first();
        for (int place = columns.at(from); place < columns.halfDays(); place++) {
            all += columns.days().get(place / 2).closed().isEmpty() ? 1 : 0;
        }
        return all * sheet.crews().size();
    }
}
