package org.plumbrow.calc.electrical;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/** Standard ratings of overcurrent devices. Source: NEC 240.6(A), 240.4(B), as commonly reprinted. */
public final class Overcurrent {

    /** Continuous current counts by a quarter more (NEC 210.20(A), 690.8(B), 705.28). */
    public static final double CONTINUOUS = 1.25;

    /** Up to here the next standard size above a conductor's ampacity may protect it (240.4(B)). */
    public static final int NEXT_SIZE_UP_TO_A = 800;

    private static final int[] STANDARD = {
        15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500,
        600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000
    };

    private Overcurrent() {}

    public static List<Integer> standardSizes() {
        return Arrays.stream(STANDARD).boxed().toList();
    }

    /** The smallest standard device for a current that counts already by a quarter more; empty above 6000 A. */
    public static OptionalInt sizeFor(double amperes) {
        return Arrays.stream(STANDARD).filter(size -> size >= amperes - 1e-9).findFirst();
    }

    /** The largest device that protects a conductor of that ampacity: itself where standard, else the next up to 800 A. */
    public static OptionalInt largestFor(double ampacity) {
        OptionalInt above = sizeFor(ampacity);
        if (above.isPresent() && (above.getAsInt() <= ampacity + 1e-9 || above.getAsInt() <= NEXT_SIZE_UP_TO_A)) {
            return above;
        }
        return Arrays.stream(STANDARD).filter(size -> size <= ampacity).max();
    }
}
