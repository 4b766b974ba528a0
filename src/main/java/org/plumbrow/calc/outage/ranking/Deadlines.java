package org.plumbrow.calc.outage.ranking;

import java.util.ArrayList;
import java.util.List;

/**
 * By when the power must be back: half of the ride-through, the next milking, blackout or business hours that follow, the
 * end of the utility's slot, dusk, the next storm of the forecast. With a generator the loads' own time does not count.
 */
final class Deadlines {

    private static final double NO_LOAD_LIMIT = 100 * 1440;

    /** @param words what binds: "milking at 4:30 pm" */
    record Deadline(int minute, String words) {}

    private final LoadTable loads;
    private final boolean generator;
    private final int planned;
    private final List<Spans> following;
    private final SlotRule slots;
    private final DayRules.ByDaylight daylight;
    private final List<WeatherRules.OfHours> storms;

    Deadlines(
            SiteSpans site,
            HourQuestion question,
            LoadTable loads,
            SlotRule slots,
            DayRules.ByDaylight daylight,
            List<WeatherRules.OfHours> storms) {
        this.loads = loads;
        this.generator = question.generator().isPresent();
        this.planned = question.work().planned();
        this.slots = slots;
        this.daylight = daylight;
        this.storms = storms;
        following = new ArrayList<>();
        question.milk().ifPresent(milk -> following.add(site.daily(milk.milkings())));
        following.add(site.blackouts(question.customer().blackouts()));
        following.add(site.blackouts(question.customer().business()));
    }

    /** The first of those that do not move with the start. */
    Deadline fixed(int start) {
        Deadline first = suffering(start);
        first = earlier(first, slots.endOf(start), "the end of the utility's slot");
        int dusk = daylight.dusk(start);
        if (dusk >= start + planned) {
            first = earlier(first, dusk, "dusk");
        }
        for (WeatherRules.OfHours storm : storms) {
            first = earlier(
                    first, storm.nextBroken(start + planned, SiteClock.endOfDay(start)), "the weather that comes");
        }
        return first;
    }

    /** The first fixed one at which somebody or something suffers. */
    Deadline suffering(int start) {
        Deadline first = new Deadline(SiteClock.NEVER, "nothing");
        for (Spans spans : following) {
            first = earlier(first, spans.nextFrom(start + planned), spans.nextReason(start + planned));
        }
        return first;
    }

    Deadline of(int start) {
        Deadline first = fixed(start);
        if (generator || loads.isEmpty()) {
            return first;
        }
        double half = loads.worst(start, start + planned).shortEnd() / 2;
        return half > NO_LOAD_LIMIT
                ? first
                : earlier(first, start + (int) Math.floor(half), "half of the ride-through");
    }

    private static Deadline earlier(Deadline first, int minute, String words) {
        return minute < first.minute ? new Deadline(minute, words) : first;
    }

    /** The latest minute to reverse does not lie before the start. */
    record Reversal(Deadlines deadlines, int wayBack) implements Rule.Hourly {
        @Override
        public int reach() {
            return deadlines.planned;
        }

        @Override
        public Factor judge(int start) {
            Deadline by = deadlines.of(start);
            double value = by.minute == SiteClock.NEVER ? Double.POSITIVE_INFINITY : by.minute - wayBack - start;
            return Factor.atLeast(FactorKind.REVERSAL, value, 0, by.words);
        }

        @Override
        public int keepsUntil(int start) {
            int hourly = Rule.Hourly.super.keepsUntil(start);
            int until = start - 1;
            // What binds may end before it breaks anything: a second slot reaches further than the first.
            while (until < hourly && !judge(until + 1).isBroken()) {
                int fixed = deadlines.fixed(until + 1).minute;
                until = fixed == SiteClock.NEVER ? hourly : Math.min(hourly, fixed - wayBack);
            }
            return until;
        }
    }
}
