package org.plumbrow.estimate.site;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.Range;

/**
 * Yield over tilt and azimuth for one array, with what rows need beside it.
 *
 * @param arrays names of all, to choose from
 * @param ownShare of the best, 0 to 1
 * @param rows of the table, the steepest first
 * @param azimuths heads of its columns
 * @param spacings by tilt, for arrays on racks; empty on a pitched roof
 */
record OrientationView(
        Choice choice,
        List<String> arrays,
        String array,
        double ownTiltDeg,
        double ownAzimuthDeg,
        double ownKwhPerKw,
        double bestTiltDeg,
        double bestAzimuthDeg,
        double bestKwhPerKw,
        double ownShare,
        List<Integer> azimuths,
        List<Row> rows,
        List<Spacing> spacings) {

    static final Range ROW_FT = new Range(1, 98, "ft");
    static final Range FREE_HOURS = new Range(0, 8, "hours");

    /** @param rowFt slant height of a row @param freeHours around noon on the shortest day without shade */
    record Choice(int array, double rowFt, double freeHours) {

        static final double USUAL_ROW_FT = 13.5;
        static final double USUAL_FREE_HOURS = 6;

        static Choice usual() {
            return new Choice(0, USUAL_ROW_FT, USUAL_FREE_HOURS);
        }
    }

    record Row(int tiltDeg, List<Cell> cells) {}

    /** @param percent of the best @param band css class of its tint @param own the array's own orientation lies here */
    record Cell(int percent, String band, boolean own, boolean best) {}

    /**
     * @param sharePercent of the best, at the array's own azimuth
     * @param pitchFt least distance row to row; null where the sun is too low for so many hours
     * @param acres for the whole array
     */
    record Spacing(
            int tiltDeg,
            double sharePercent,
            @Nullable Double pitchFt,
            @Nullable Double gapFt,
            @Nullable Double acres,
            @Nullable Double sqFtPerKw,
            boolean own) {}
}
