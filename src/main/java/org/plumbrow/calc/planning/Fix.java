package org.plumbrow.calc.planning;

import java.util.Optional;
import org.plumbrow.calc.calendar.HalfDay;

/** What is already settled about an activity, before any planning. */
public sealed interface Fix {

    Fix FREE = new Free();

    /** Nothing: the plan decides. */
    record Free() implements Fix {}

    /** Starts then and not otherwise: a date that was told to somebody. The crew may be settled too. */
    record Pinned(HalfDay start, Optional<String> crewId) implements Fix {
        public static Pinned at(HalfDay start) {
            return new Pinned(start, Optional.empty());
        }
    }

    /**
     * Has begun. Work goes on with that crew from today for what is left; a wait counts from its start.
     *
     * @param halfDaysLeft of work, at least 1; not read for a wait
     */
    record Begun(HalfDay start, Optional<String> crewId, int halfDaysLeft) implements Fix {
        public Begun {
            if (halfDaysLeft < 1) {
                throw new IllegalArgumentException("half-days left must be at least 1: " + halfDaysLeft);
            }
        }
    }

    /** A wait that has begun and whose answer somebody promised for then. */
    record Expected(HalfDay start, HalfDay answer) implements Fix {
        public Expected {
            inOrder(start, answer);
        }
    }

    /** Finished. */
    record Done(HalfDay start, HalfDay finish) implements Fix {
        public Done {
            inOrder(start, finish);
        }
    }

    private static void inOrder(HalfDay start, HalfDay finish) {
        if (finish.isBefore(start)) {
            throw new IllegalArgumentException("finish " + finish + " lies before start " + start);
        }
    }
}
