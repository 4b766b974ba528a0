package org.plumbrow.calc.finance.use;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.Month;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneOffsetTransitionRule;
import java.time.zone.ZoneOffsetTransitionRule.TimeDefinition;
import java.time.zone.ZoneRules;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A meter's own clock as Green Button files carry it: offset from UTC in standard time, how far it is put forward, and two
 * rules of 8 hex digits: bits 0-11 seconds, 12-16 hour, 17-19 weekday (1 Monday to 7 Sunday, 0 none), 20-24 day of the
 * month, 25-27 which (0 the day itself, 1 the weekday on or after it, 2 to 6 the first to fifth weekday, 7 the last), 28-31
 * month. Source: the schema of NAESB REQ.21 (ESPI).
 */
final class ClockRules {

    private static final String NONE = "FFFFFFFF";
    private static final int LAST = 7;
    private static final int FIFTH = 6;
    private static final int FIRST_YEAR = 1970;

    private ClockRules() {}

    /** @return empty when a rule is broken: then the caller's own clock counts, and that is said */
    static Optional<ZoneRules> of(int offsetS, int forwardS, String startRule, String endRule) {
        try {
            ZoneOffset standard = ZoneOffset.ofTotalSeconds(offsetS);
            if (forwardS == 0 || startRule.equalsIgnoreCase(NONE) || endRule.equalsIgnoreCase(NONE)) {
                return Optional.of(ZoneRules.of(standard));
            }
            ZoneOffset forward = ZoneOffset.ofTotalSeconds(offsetS + forwardS);
            return Optional.of(everyYear(
                    standard,
                    rule(startRule, standard, standard, forward),
                    rule(endRule, standard, forward, standard)));
        } catch (RuntimeException broken) {
            return Optional.empty();
        }
    }

    /** The JDK asks the rules only after a first pair of changes that is spelled out. */
    private static ZoneRules everyYear(
            ZoneOffset standard, ZoneOffsetTransitionRule start, ZoneOffsetTransitionRule end) {
        List<ZoneOffsetTransition> first = Stream.of(
                        start.createTransition(FIRST_YEAR), end.createTransition(FIRST_YEAR))
                .sorted()
                .toList();
        ZoneOffset before = first.get(0).getOffsetBefore();
        return ZoneRules.of(standard, before, List.of(), first, List.of(start, end));
    }

    private static ZoneOffsetTransitionRule rule(String hex, ZoneOffset standard, ZoneOffset before, ZoneOffset after) {
        if (hex.length() != NONE.length()) {
            throw new IllegalArgumentException(hex);
        }
        long bits = Long.parseLong(hex, 16);
        int which = (int) (bits >> 25 & 7);
        int weekday = (int) (bits >> 17 & 7);
        return ZoneOffsetTransitionRule.of(
                Month.of((int) (bits >> 28 & 15)),
                dayIndicator(which, (int) (bits >> 20 & 31)),
                which == 0 ? null : DayOfWeek.of(weekday),
                LocalTime.of((int) (bits >> 12 & 31), 0).plusSeconds(bits & 0xFFF),
                false,
                TimeDefinition.WALL,
                standard,
                before,
                after);
    }

    private static int dayIndicator(int which, int day) {
        if (which <= 1) {
            return day;
        }
        return which == LAST || which == FIFTH ? -1 : 1 + 7 * (which - 2);
    }
}
