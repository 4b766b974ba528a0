package org.plumbrow.calc.energy;

import org.plumbrow.calc.Range;

/**
 * How many modules a rectangle holds, before anybody draws: whole modules beside and behind one another with a gap between.
 * A module is 1.134 m wide and as long as 215 W for each square metre make it: common practice for modules of today, no
 * published source. What stands on the rectangle is not taken off.
 *
 * @param across modules side by side, along the eave or a row
 * @param deep modules up the slope, or in all rows one behind the other
 */
public record ModuleFit(int across, int deep) {

    public static final double W_PER_M2 = 215;
    public static final double SHORT_SIDE_M = 1.134;
    public static final double GAP_M = 0.02;
    public static final Range MODULE_W = new Range(10, 1_000, "W");
    public static final Range SIDE_M = new Range(0, 10_000, "m");

    private static final ModuleFit NONE = new ModuleFit(0, 0);

    public int modules() {
        return across * deep;
    }

    public static double longSideM(double moduleW) {
        return MODULE_W.check("power of a module", moduleW) / W_PER_M2 / SHORT_SIDE_M;
    }

    /** Flat on a plane, upright or lying, whichever holds more. @param acrossM along the eave @param deepM up the slope */
    public static ModuleFit flush(double acrossM, double deepM, double moduleW) {
        double longSide = longSideM(moduleW);
        ModuleFit upright = new ModuleFit(count(acrossM, SHORT_SIDE_M), count(deepM, longSide));
        ModuleFit lying = new ModuleFit(count(acrossM, longSide), count(deepM, SHORT_SIDE_M));
        return lying.modules() > upright.modules() ? lying : upright;
    }

    /**
     * In rows on level ground, one behind the other, the last without a free strip behind it.
     *
     * @param table modules of one row, up its slope
     * @param pitchM row to row
     */
    public static ModuleFit rows(
            double acrossM, double deepM, double moduleW, Table table, Plane plane, double pitchM) {
        double first = table.widthM(moduleW) * plane.up();
        SIDE_M.check("depth of the field", deepM);
        if (first > deepM) {
            return NONE;
        }
        int rows = 1 + (int) Math.floor((deepM - first) / pitchM + 1e-9);
        int across = count(acrossM, table.upright ? SHORT_SIDE_M : longSideM(moduleW));
        return new ModuleFit(across, rows * table.high);
    }

    /** @param high modules above one another in a row @param upright long side up the slope */
    public record Table(int high, boolean upright) {

        /** Slant height of the row. */
        public double widthM(double moduleW) {
            return high * (upright ? longSideM(moduleW) : SHORT_SIDE_M) + (high - 1) * GAP_M;
        }
    }

    private static int count(double lengthM, double sideM) {
        SIDE_M.check("side of the rectangle", lengthM);
        return (int) Math.floor((lengthM + GAP_M) / (sideM + GAP_M) + 1e-9);
    }
}
