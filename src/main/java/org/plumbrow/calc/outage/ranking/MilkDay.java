package org.plumbrow.calc.outage.ranking;

import java.util.List;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.ridethrough.MilkCooling;
import org.plumbrow.calc.ridethrough.MilkTank;

/**
 * Milking and the tank.
 *
 * @param milkings of every day
 * @param tankAfterMilkingC what the tank shows when milking ends, 0 to 40
 * @param coolingKPerHour under power, 0.5 to 20
 * @param storedC what the tank is set to, 0 to 10
 */
public record MilkDay(List<Daily> milkings, double tankAfterMilkingC, double coolingKPerHour, double storedC) {

    /** Free before and after the whole window (common practice on the published limits of milk). */
    public static final int FREE_MINUTES = 120;

    public static final Range STORED = new Range(0, 10, "degC");

    public MilkDay {
        milkings = List.copyOf(milkings);
        MilkTank.MILK.check("tank after milking", tankAfterMilkingC);
        MilkCooling.COOLING.check("cooling", coolingKPerHour);
        STORED.check("stored milk", storedC);
    }
}
