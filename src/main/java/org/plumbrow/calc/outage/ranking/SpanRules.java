package org.plumbrow.calc.outage.ranking;

import static org.plumbrow.calc.outage.ranking.SiteClock.NEVER;

/** Rules about stretches of time that must stay free: within the window, before it, behind it. */
final class SpanRules {

    private SpanRules() {}

    /** No minute of the window may be taken. */
    record Free(FactorKind kind, Spans spans, int planned) implements Rule {
        @Override
        public Factor judge(int start) {
            return Factor.atMost(kind, spans.overlap(start, start + planned), 0, spans.reason(start, start + planned));
        }

        @Override
        public int keepsUntil(int start) {
            int next = spans.nextFrom(start + planned);
            return next == NEVER ? NEVER : next - planned;
        }
    }

    /** So many minutes from the end of the window to the next one. */
    record Ahead(FactorKind kind, Spans spans, int planned, int least) implements Rule {
        @Override
        public Factor judge(int start) {
            int next = spans.nextFrom(start);
            double value = next == NEVER ? Double.POSITIVE_INFINITY : next - start - planned;
            return Factor.atLeast(kind, value, least, spans.nextReason(start));
        }

        @Override
        public int keepsUntil(int start) {
            int next = spans.nextFrom(start);
            return next == NEVER ? NEVER : next - planned - least;
        }
    }

    /** So many minutes from the end of the last one to the start of the window. */
    record Behind(FactorKind kind, Spans spans, int least) implements Rule {
        private static final int NONE = Integer.MIN_VALUE;

        @Override
        public Factor judge(int start) {
            int last = spans.lastTo(start, NONE);
            return Factor.atLeast(kind, last == NONE ? Double.POSITIVE_INFINITY : start - last, least, "");
        }

        @Override
        public int keepsUntil(int start) {
            int next = spans.nextFrom(start + 1);
            return next == NEVER ? NEVER : next - 1;
        }
    }

    /** The tank is cold when the power goes: it cools from the end of the last milking. */
    record Tank(MilkDay milk, Spans milkings) implements Rule {
        private static final int NONE = Integer.MIN_VALUE;

        @Override
        public Factor judge(int start) {
            int last = milkings.lastTo(start, NONE);
            return Factor.atMost(
                    FactorKind.TANK,
                    last == NONE ? milk.storedC() : tankC(start - last),
                    org.plumbrow.calc.ridethrough.MilkTank.BEFORE_OUTAGE.value(),
                    "");
        }

        private double tankC(int minutesAfterMilking) {
            double after = milk.tankAfterMilkingC();
            double cooled = after - milk.coolingKPerHour() * Math.max(0, minutesAfterMilking) / 60;
            return Math.max(Math.min(milk.storedC(), after), cooled);
        }

        @Override
        public int keepsUntil(int start) {
            int next = milkings.nextFrom(start + 1);
            return next == NEVER ? NEVER : next - 1;
        }
    }
}
