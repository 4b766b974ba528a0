package org.plumbrow.calc.duration;

import java.util.Map;
import org.plumbrow.calc.Range;

/**
 * How much a crew does in a day of 8 productive hours: one row of a branch's table.
 *
 * @param unit what is counted, without "a day"
 * @param low units a crew-day that 9 of 10 days reach; it gives the long duration
 * @param high units a crew-day that 1 of 10 days reaches
 * @param crewLeast people the row is meant for at a home
 * @param crewMost people the row is meant for elsewhere
 * @param equipment kinds and how many of each
 * @param firstUnitDays days to set up before the first unit, 0 or more
 * @param pace what limits the rate
 * @param source empty when it is common practice without a source
 */
public record WorkRate(
        String code,
        String words,
        String unit,
        double low,
        double typical,
        double high,
        int crewLeast,
        int crewMost,
        Map<EquipmentKind, Integer> equipment,
        double firstUnitDays,
        Pace pace,
        String source) {

    /** Units a crew-day. */
    public static final Range RATE = new Range(0.01, 100_000, "a day");

    /** People of a crew. */
    public static final Range PEOPLE = new Range(1, 40, "people");

    /** More hands make it faster, or the machine sets the pace. */
    public enum Pace {
        CREW,
        MACHINE
    }

    /** Beyond so many times the table's people, more hands stand in each other's way (common practice, no source). */
    private static final int CROWDED = 2;

    public WorkRate {
        RATE.check("low rate", low);
        RATE.check("typical rate", typical);
        RATE.check("high rate", high);
        PEOPLE.check("least people", crewLeast);
        PEOPLE.check("most people", crewMost);
        if (low > typical || typical > high || crewLeast > crewMost || !(firstUnitDays >= 0)) {
            throw new IllegalArgumentException("row " + code + " is not in order");
        }
        equipment = Map.copyOf(equipment);
    }

    int crew(boolean home) {
        return home ? crewLeast : crewMost;
    }

    /** Crew-days of the row's own crew; the low rate gives the long duration. */
    public Spread crewDays(double quantity) {
        return quantity == 0
                ? Spread.ZERO
                : new Spread(
                        firstUnitDays + quantity / high,
                        firstUnitDays + quantity / typical,
                        firstUnitDays + quantity / low);
    }

    /** What to multiply the row's crew-days by for a crew of that many people. */
    double factorFor(int people, boolean home) {
        int own = crew(home);
        int useful = Math.min(people, pace == Pace.MACHINE ? own : CROWDED * own);
        return (double) own / useful;
    }

    /** Whether finished work of the branch has a say in it. */
    public boolean isLearned() {
        return source.startsWith(LearnedPace.LEARNED);
    }

    public String sourceWords() {
        return source.isEmpty() ? "common practice, no source" : source;
    }

    private static double within(double rate) {
        return Math.max(RATE.least(), Math.min(RATE.most(), rate));
    }

    /** The same row with other figures. @param from where they are from */
    WorkRate paced(double lowRate, double typicalRate, double highRate, String from) {
        return new WorkRate(
                code,
                words,
                unit,
                within(lowRate),
                within(typicalRate),
                within(highRate),
                crewLeast,
                crewMost,
                equipment,
                firstUnitDays,
                pace,
                from);
    }
}
