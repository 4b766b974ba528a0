package org.plumbrow.calc.ridethrough.house;

import java.util.List;
import org.plumbrow.calc.Range;

/** What a house loses heat through: every surface to the outside with its area and U-value. */
public record Envelope(List<Surface> surfaces) {

    public Envelope {
        surfaces = List.copyOf(surfaces);
    }

    /**
     * @param areaM2 0 to 100,000
     * @param uWPerM2K heat through one square metre per kelvin, 0.05 to 10 W/(m2 K)
     */
    public record Surface(String name, double areaM2, double uWPerM2K) {
        public static final Range AREA = new Range(0, 100_000, "m2");
        public static final Range U_VALUE = new Range(0.05, 10, "W/(m2 K)");

        public Surface {
            AREA.check("area of " + name, areaM2);
            U_VALUE.check("U-value of " + name, uWPerM2K);
        }
    }

    /** A long house with a flat ceiling: two side walls, two gables, the ceiling; what goes into the ground is left out. */
    public static Envelope ofBox(double lengthM, double widthM, double heightM, double wallU, double ceilingU) {
        return new Envelope(List.of(
                new Surface("walls", 2 * (lengthM + widthM) * heightM, wallU),
                new Surface("ceiling", lengthM * widthM, ceilingU)));
    }

    /** Heat through all of it, W/K. */
    public double uaWPerK() {
        return surfaces.stream().mapToDouble(one -> one.areaM2 * one.uWPerM2K).sum();
    }
}
