package org.plumbrow.calc.planning;

import java.util.List;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import org.plumbrow.calc.calendar.DayWords;

/** The ways in which an activity gets its dates, used alike for what is settled and for what is free. */
final class Placing {

    final Board board;
    final CrewChoice choice;
    final SpotSearch search;

    Placing(Board board) {
        this.board = board;
        choice = new CrewChoice(board);
        search = new SpotSearch(board);
    }

    void atDesk(int number, int halfDays, Readiness ready) {
        int finish = ready.slot() + halfDays - 1;
        if (finish >= board.time.size()) {
            noRoom(number);
        } else {
            board.place(number, board.time.at(ready.slot()), board.time.at(finish), ready.bound());
        }
    }

    void waiting(int number, Work.Waiting wait, Readiness ready) {
        if (ready.slot() >= board.time.size()) {
            noRoom(number);
        } else {
            var start = board.time.at(ready.slot());
            board.place(number, start, board.time.answered(start, wait), ready.bound());
        }
    }

    /** With the crew that finishes it first; among equals one that is free anyway, then the first in the problem's order. */
    void byFirstCrew(int number, List<Integer> crews, IntUnaryOperator halfDays, Readiness ready) {
        if (crews.isEmpty()) {
            board.find(number, Finding.Kind.NO_CREW, choice.whyNobody(number));
            return;
        }
        Optional<String> lacking = lackingEquipment(number);
        if (lacking.isPresent()) {
            board.find(number, Finding.Kind.NO_EQUIPMENT, lacking.get());
            return;
        }
        Optional<Spot> best = Optional.empty();
        for (int crew : crews) {
            int latest = best.isPresent() ? best.get().latestBetter() : board.time.size();
            Optional<Spot> spot =
                    search.first(number, crew, halfDays.applyAsInt(crew), ready.slot(), ready.bound(), latest);
            best = spot.isPresent() && (best.isEmpty() || spot.get().isBetterThan(best.get())) ? spot : best;
        }
        best.ifPresentOrElse(spot -> book(number, spot), () -> noRoom(number));
    }

    void book(int number, Spot spot) {
        int groupsCrew = choice.settle(number, spot.crew());
        if (groupsCrew != spot.crew()) {
            board.find(
                    number,
                    Finding.Kind.TWO_CREWS,
                    "%s is settled with %s, but %s does the other work of its group."
                            .formatted(
                                    board.name(number),
                                    board.crews[spot.crew()].crew.name(),
                                    board.crews[groupsCrew].crew.name()));
        }
        board.book(number, spot);
    }

    /** What the branch can never provide, as a sentence. */
    private Optional<String> lackingEquipment(int number) {
        for (EquipmentNeed need : board.activity(number).equipment()) {
            EquipmentTimeline timeline = board.equipment.get(need.equipmentId());
            int owned = timeline == null ? 0 : timeline.equipment.count();
            if (owned < need.count()) {
                return Optional.of("%s needs %d of %s; the branch has %d."
                        .formatted(
                                board.name(number), need.count(), board.words().equipment(need.equipmentId()), owned));
            }
        }
        return Optional.empty();
    }

    void noRoom(int number) {
        board.find(
                number,
                Finding.Kind.NO_ROOM,
                "%s does not end before %s, where this plan ends."
                        .formatted(board.name(number), DayWords.withYear(board.problem.lastDay())));
    }
}
