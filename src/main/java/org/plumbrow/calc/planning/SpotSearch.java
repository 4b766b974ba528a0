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
     * The first place from a slot on; empty when there is none before the end of the time line, or none as early as needed.
     *
     * @param ready why it may not start before that slot
     * @param latest it has to end by that slot
     */
    Optional<Spot> first(int number, int crewNumber, int halfDays, int from, Bound ready, int latest) {
        Activity activity = board.activity(number);
        CrewTimeline crew = board.crews[crewNumber];
        int begun = crew.indexAtOrAfter(from);
        int index = Math.max(begun, crew.firstFree());
        int lastBusy = index > begun ? index - 1 : NONE;
        int lastScarce = NONE;
        int length = board.time.lengthFrom(crew.present, index, halfDays, activity.outdoor());
        while (length != NONE && crew.present[index + length - 1] <= latest) {
            int busy = crew.lastBusyIn(index, length);
            int scarce = busy != NONE
                    ? NONE
                    : lastShortage(activity.equipment(), crew.present[index], crew.present[index + length - 1]);
            if (busy == NONE && scarce == NONE) {
                Bound bound = bound(activity, crew, crew.present[index], from, lastBusy, lastScarce, ready);
                return Optional.of(spot(crewNumber, index, length, bound));
            }
            lastScarce = scarce;
            index = busy != NONE ? crew.nextFree(busy + 1) : crew.indexAtOrAfter(scarce + 1);
            lastBusy = busy != NONE ? index - 1 : NONE;
            length = board.time.lengthFrom(crew.present, index, halfDays, activity.outdoor());
        }
        return Optional.empty();
    }

    /** What moved the start last: an absence right before it, else the booking or the shortage met last. */
    private Bound bound(
            Activity activity, CrewTimeline crew, int start, int from, int lastBusy, int lastScarce, Bound ready) {
        if (start > from && !crew.isPresent(start - 1)) {
            return away(crew, start - 1);
        }
        if (lastBusy != NONE) {
            return busy(crew, lastBusy);
        }
        return lastScarce == NONE ? ready : shortage(activity.equipment(), lastScarce);
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
