package org.plumbrow.calc.ridethrough;

import java.util.OptionalDouble;

/**
 * Minutes without power until one limit is reached.
 *
 * @param shortEnd with every doubtful input at its worst; empty: not within the time looked at
 * @param likely with the inputs as given
 * @param longEnd with every doubtful input at its best
 */
public record LimitTime(Limit limit, OptionalDouble shortEnd, OptionalDouble likely, OptionalDouble longEnd) {

    public LimitTime {
        if (orEndless(shortEnd) > orEndless(likely) || orEndless(likely) > orEndless(longEnd)) {
            throw new IllegalArgumentException(
                    "minutes %s, %s, %s are not in order".formatted(shortEnd, likely, longEnd));
        }
    }

    /** A limit whose inputs are taken as exact. */
    public static LimitTime exactly(Limit limit, OptionalDouble minutes) {
        return new LimitTime(limit, minutes, minutes, minutes);
    }

    static double orEndless(OptionalDouble minutes) {
        return minutes.orElse(Double.POSITIVE_INFINITY);
    }
}
