package org.plumbrow.calc.ridethrough;

import java.time.LocalTime;
import org.plumbrow.calc.Range;

/**
 * Milk that is still being cooled when the power goes: is it cold in time all the same? Times of one day, no midnight
 * between them. Rule: at most 7 degC (45 degF) two hours after milking ends.
 *
 * @param milkingEnds when the last warm milk came in
 * @param milkC what the tank shows then
 * @param coolingKPerHour how fast it cools under power, 0.5 to 20; tanks are made for 90 to 50 degF in the first hour
 *     (3-A standard 13)
 */
public record MilkCooling(LocalTime milkingEnds, double milkC, double coolingKPerHour) {

    public static final int COLD_WITHIN_MINUTES = 120;
    public static final Range COOLING = new Range(0.5, 20, "K/h");

    public MilkCooling {
        MilkTank.MILK.check("temperature of the milk", milkC);
        COOLING.check("cooling", coolingKPerHour);
    }

    /** The minute by which the milk must be cold. */
    public LocalTime coldBy() {
        return milkingEnds.plusMinutes(COLD_WITHIN_MINUTES);
    }

    /** Minutes of cooling that the milk needs from the end of milking, no outage between. */
    public double coolingMinutes() {
        return minutesFrom(milkC, MilkTank.STORED.value());
    }

    /** What the tank shows after so many minutes of cooling; it stops at the temperature it is stored at. */
    public double afterCoolingC(double minutes, double storedC) {
        return Math.max(Math.min(storedC, milkC), milkC - coolingKPerHour * minutes / 60);
    }

    /**
     * @param milkWhenBackC what the tank shows when the power returns
     * @param stillMinutes minutes of cooling needed from then
     * @param coldAt minute of the day, from midnight, at which the milk is cold
     * @param slackMinutes until the rule's minute; negative: too late
     * @param latestBackMinute minute of the day by which the power must be back
     */
    public record Outcome(
            double milkWhenBackC, double stillMinutes, double coldAt, double slackMinutes, double latestBackMinute) {}

    /**
     * An outage after milking has ended.
     *
     * @param warmsByK what the tank gains during the outage, see {@link MilkTank#warmsByK}
     */
    public Outcome withOutage(LocalTime off, LocalTime back, double warmsByK) {
        double milkWhenBack = milkC - coolingKPerHour * (minute(off) - minute(milkingEnds)) / 60.0 + warmsByK;
        double still = minutesFrom(milkWhenBack, MilkTank.STORED.value());
        double coldAt = minute(back) + still;
        return new Outcome(milkWhenBack, still, coldAt, minute(coldBy()) - coldAt, minute(coldBy()) - still);
    }

    private double minutesFrom(double fromC, double toC) {
        return Math.max(0, (fromC - toC) / coolingKPerHour * 60);
    }

    private static int minute(LocalTime time) {
        return time.toSecondOfDay() / 60;
    }
}
