package org.plumbrow.design.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.design.PvArray;

/** An array's measures in feet, and where each module lies. */
final class ArrayShape {

    /** Between two modules: what a middle clamp takes, about 20 mm. */
    static final double GAP_FT = 0.066;

    private static final double MM = 1000;

    private final PvArray array;

    ArrayShape(PvArray array) {
        this.array = array;
    }

    /**
     * A module in plan; from the lower left corner of the array, right and up.
     *
     * @param number counted from 1: along the lowest line of row 1, then its next line, then row 2
     * @param row from 0
     * @param line within the row, from 0 at its lower edge
     * @param column from 0
     */
    record Spot(int number, int row, int line, int column, double rightFt, double upFt) {}

    double acrossFt() {
        return Say.feet((array.portrait()
                        ? array.module().shortSideMm()
                        : array.module().longSideMm())
                / MM);
    }

    double upFt() {
        return Say.feet(
                (array.portrait() ? array.module().longSideMm() : array.module().shortSideMm()) / MM);
    }

    double rowLengthFt(int row) {
        int wide = array.modulesWide().get(row);
        return wide * acrossFt() + Math.max(0, wide - 1) * GAP_FT;
    }

    /** Along the slope. */
    double slantFt() {
        return array.modulesHigh() * upFt() + (array.modulesHigh() - 1) * GAP_FT;
    }

    boolean isFlush() {
        return array.mounting() == Mounting.PITCHED_ROOF;
    }

    /** How much a length along the slope is shortened in the drawing: a roof plane is seen square to it. */
    double shortening() {
        return isFlush() ? 1 : Math.cos(Math.toRadians(array.tiltDeg()));
    }

    double depthFt() {
        return slantFt() * shortening();
    }

    double pitchFt() {
        Double pitch = array.rowPitchFt();
        return pitch == null ? depthFt() + GAP_FT : pitch;
    }

    double lengthFt() {
        return array.modulesWide().isEmpty()
                ? 0
                : Collections.max(array.modulesWide()) * (acrossFt() + GAP_FT) - GAP_FT;
    }

    double overallDepthFt() {
        return array.rows() == 0 ? 0 : (array.rows() - 1) * pitchFt() + depthFt();
    }

    List<Spot> spots() {
        List<Spot> spots = new ArrayList<>();
        for (int row = 0; row < array.rows(); row++) {
            for (int line = 0; line < array.modulesHigh(); line++) {
                for (int column = 0; column < array.modulesWide().get(row); column++) {
                    spots.add(new Spot(
                            spots.size() + 1,
                            row,
                            line,
                            column,
                            column * (acrossFt() + GAP_FT),
                            row * pitchFt() + line * (upFt() + GAP_FT) * shortening()));
                }
            }
        }
        return spots;
    }
}
