package org.plumbrow.calc.electrical;

import java.util.Arrays;
import java.util.Optional;

/** Size of the equipment grounding conductor. Source: NEC Table 250.122 and 250.122(B), as commonly reprinted. */
public final class EquipmentGround {

    private record Row(int deviceMostA, ConductorSize copper, ConductorSize aluminum) {}

    private static final Row[] TABLE = {
        new Row(15, ConductorSize.AWG_14, ConductorSize.AWG_12),
        new Row(20, ConductorSize.AWG_12, ConductorSize.AWG_10),
        new Row(60, ConductorSize.AWG_10, ConductorSize.AWG_8),
        new Row(100, ConductorSize.AWG_8, ConductorSize.AWG_6),
        new Row(200, ConductorSize.AWG_6, ConductorSize.AWG_4),
        new Row(300, ConductorSize.AWG_4, ConductorSize.AWG_2),
        new Row(400, ConductorSize.AWG_3, ConductorSize.AWG_1),
        new Row(500, ConductorSize.AWG_2, ConductorSize.AWG_1_0),
        new Row(600, ConductorSize.AWG_1, ConductorSize.AWG_2_0),
        new Row(800, ConductorSize.AWG_1_0, ConductorSize.AWG_3_0),
        new Row(1000, ConductorSize.AWG_2_0, ConductorSize.AWG_4_0),
        new Row(1200, ConductorSize.AWG_3_0, ConductorSize.KCMIL_250)
    };

    private EquipmentGround() {}

    /** The smallest one beside a device of that rating; empty above 1200 A, where an engineer decides. */
    public static Optional<ConductorSize> forDevice(double deviceA, ConductorMaterial material) {
        return Arrays.stream(TABLE)
                .filter(row -> deviceA <= row.deviceMostA())
                .findFirst()
                .map(row -> material == ConductorMaterial.COPPER ? row.copper() : row.aluminum());
    }

    /**
     * Phases that are made larger (for voltage drop) make the ground larger in the same proportion of circular mils. The
     * proportion is not rounded before it is used.
     *
     * @param needed size of the phases without the enlargement
     */
    public static Optional<ConductorSize> enlarged(ConductorSize ground, ConductorSize needed, ConductorSize used) {
        if (used.circularMils() <= needed.circularMils()) {
            return Optional.of(ground);
        }
        double circularMils = (double) ground.circularMils() * used.circularMils() / needed.circularMils();
        return Arrays.stream(ConductorSize.values())
                .filter(size -> size.circularMils() >= circularMils)
                .findFirst();
    }
}
