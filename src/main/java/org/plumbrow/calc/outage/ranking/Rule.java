package org.plumbrow.calc.outage.ranking;

/** One rule about an outage that starts at some minute of the {@link SiteClock}. */
interface Rule {

    Factor judge(int start);

    /**
     * The last minute, at or after a start at which it is not broken, up to which no start breaks it. It need not look
     * beyond the end of that day.
     */
    int keepsUntil(int start);

    /** Rules whose verdict changes only where an hour of the clock comes into sight or leaves it. */
    interface Hourly extends Rule {

        /** Minutes before the start that it looks at. */
        default int before() {
            return 0;
        }

        /** Minutes from the start to the end of what it looks at. */
        int reach();

        @Override
        default int keepsUntil(int start) {
            int end = SiteClock.endOfDay(start);
            int at = start;
            while (true) {
                int leaves = nextHour(at - before()) + before();
                int comes = nextHour(at + reach() - 1) - reach() + 1;
                at = Math.min(leaves, comes);
                if (at >= end) {
                    return end - 1;
                }
                if (judge(at).isBroken()) {
                    return at - 1;
                }
            }
        }

        private static int nextHour(int minute) {
            return (Math.floorDiv(minute, 60) + 1) * 60;
        }
    }
}
