package org.plumbrow.calc.outage.ranking;

import java.util.ArrayList;
import java.util.List;
import org.plumbrow.calc.outage.Slot;

/**
 * The window lies in one of the slots. The value is the minutes left behind the planned end, below zero by how much it
 * does not fit.
 *
 * @param lookBelow with less left behind it somebody should look
 */
record SlotRule(FactorKind kind, List<List<Slot>> byWeekday, SiteClock clock, int planned, int lookBelow)
        implements Rule {

    static SlotRule of(FactorKind kind, List<Slot> slots, SiteClock clock, int planned, int lookBelow) {
        List<List<Slot>> byWeekday = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            java.time.DayOfWeek weekday = clock.zero().plusDays(i).getDayOfWeek();
            byWeekday.add(slots.stream()
                    .filter(slot -> slot.weekdays().contains(weekday))
                    .toList());
        }
        return new SlotRule(kind, byWeekday, clock, planned, lookBelow);
    }

    private List<Slot> slotsAt(int minute) {
        return byWeekday.get(Math.floorMod(Math.floorDiv(minute, SiteClock.DAY), 7));
    }

    @Override
    public Factor judge(int start) {
        int ofDay = Math.floorMod(start, SiteClock.DAY);
        int value = -SiteClock.DAY;
        for (Slot slot : slotsAt(start)) {
            value = Math.max(value, left(slot, ofDay));
        }
        Factor factor = Factor.atLeast(kind, value, 0, "");
        return factor.isBroken() || value >= lookBelow ? factor : factor.as(Verdict.CAUTION);
    }

    private int left(Slot slot, int ofDay) {
        int behind = SiteClock.minuteOf(slot.end()) - ofDay - planned;
        int before = Math.min(ofDay - SiteClock.minuteOf(slot.from()), SiteClock.minuteOf(slot.to()) - ofDay);
        return before < 0 ? Math.min(before, behind) : behind;
    }

    @Override
    public int keepsUntil(int start) {
        int day = Math.floorDiv(start, SiteClock.DAY) * SiteClock.DAY;
        int until = start - 1;
        boolean further = true;
        while (further) {
            int before = until;
            for (Slot slot : slotsAt(start)) {
                if (left(slot, until + 1 - day) >= 0) {
                    int lastByEnd = SiteClock.minuteOf(slot.end()) - planned;
                    until = Math.max(until, day + Math.min(SiteClock.minuteOf(slot.to()), lastByEnd));
                }
            }
            further = until > before && until + 1 < day + SiteClock.DAY;
        }
        return until;
    }

    /** The last minute of the slot that holds the window; never when none does. */
    int endOf(int start) {
        int ofDay = Math.floorMod(start, SiteClock.DAY);
        int end = slotsAt(start).stream()
                .filter(slot -> left(slot, ofDay) >= 0)
                .mapToInt(slot -> SiteClock.minuteOf(slot.end()))
                .max()
                .orElse(-1);
        return end < 0 ? SiteClock.NEVER : start - ofDay + end;
    }
}
