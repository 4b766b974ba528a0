package org.plumbrow.calc.planning;

import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;

/** Finds the first place in a crew's time where a work fits, and says what stood in the way. */
final class SpotSearch {

    private static final int NONE = -1;

    private final Board board;

    SpotSearch(Board board) {
        this.board = board;
    }

    /**
     * The first place from a slot on; empty when there is none before the end of the time line.
     *
     * @param ready why it may not start before that slot
     */
    Optional<Spot> first(int number, int crewNumber, int halfDays, int from, Bound ready) {
        Activity activity = board.activity(number);
        CrewTimeline crew = board.crews[crewNumber];
        Bound bound = ready;
        int index = crew.indexAtOrAfter(from);
        int length = board.time.lengthFrom(crew.present, index, halfDays, activity.outdoor());
        while (length != NONE) {
            int busy = crew.lastBusyIn(index, length);
            int start = crew.present[index];
            int scarce =
                    busy == NONE ? lastShortage(activity.equipment(), start, crew.present[index + length - 1]) : NONE;
            if (busy != NONE) {
                bound = busy(crew, busy);
                index = busy + 1;
            } else if (scarce != NONE) {
                bound = shortage(activity.equipment(), scarce);
                index = crew.indexAtOrAfter(scarce + 1);
            } else {
                Bound last = start > from && !crew.isPresent(start - 1) ? away(crew, start - 1) : bound;
                return Optional.of(spot(crewNumber, index, length, last));
            }
            length = board.time.lengthFrom(crew.present, index, halfDays, activity.outdoor());
        }
        return Optional.empty();
    }

    /** The place from exactly that half-day on, or the crew's next present one, whoever is booked there. */
    Optional<Spot> regardless(int number, int crewNumber, int halfDays, int from, Bound bound) {
        CrewTimeline crew = board.crews[crewNumber];
        int index = crew.indexAtOrAfter(from);
        int length = board.time.lengthFrom(
                crew.present, index, halfDays, board.activity(number).outdoor());
        return length == NONE ? Optional.empty() : Optional.of(spot(crewNumber, index, length, bound));
    }

    private Spot spot(int crewNumber, int index, int length, Bound bound) {
        int[] present = board.crews[crewNumber].present;
        return new Spot(crewNumber, index, length, present[index], present[index + length - 1], bound);
    }

    private int lastShortage(List<EquipmentNeed> needs, int start, int finish) {
        int last = NONE;
        for (EquipmentNeed need : needs) {
            EquipmentTimeline timeline = board.equipment.get(need.equipmentId());
            last = Math.max(last, timeline == null ? NONE : timeline.lastShortage(start, finish, need.count()));
        }
        return last;
    }

    private Bound shortage(List<EquipmentNeed> needs, int slot) {
        for (EquipmentNeed need : needs) {
            EquipmentTimeline timeline = board.equipment.get(need.equipmentId());
            if (timeline != null && timeline.lastShortage(slot, slot, need.count()) == slot) {
                return timeline.whyShortUntil(slot, board);
            }
        }
        throw new IllegalStateException("no shortage in slot " + slot);
    }

    private Bound busy(CrewTimeline crew, int index) {
        String blocker = board.activity(crew.occupant(index)).id();
        return new Bound.CrewBusy(crew.crew.id(), blocker, board.time.at(crew.present[index]));
    }

    private Bound away(CrewTimeline crew, int slot) {
        HalfDay last = board.time.at(slot);
        String reason = crew.crew.absences().stream()
                .filter(absence -> absence.holds(last))
                .map(Absence::reason)
                .findFirst()
                .orElse("absent");
        return new Bound.CrewAway(crew.crew.id(), last, reason);
    }
}
