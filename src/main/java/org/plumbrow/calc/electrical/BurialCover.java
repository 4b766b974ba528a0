package org.plumbrow.calc.electrical;

/** Least earth over buried cables and raceways, inches. Source: NEC Table 300.5, as commonly reprinted. */
public enum BurialCover {
    ELSEWHERE("in open ground", 24, 6, 18, 12, 6),
    UNDER_TWO_INCHES_OF_CONCRETE("in a trench under 2 in of concrete", 18, 6, 12, 6, 6),
    UNDER_A_BUILDING("under a building", 0, 0, 0, 0, 0),
    UNDER_A_SLAB_WITHOUT_VEHICLES("under 4 in of outdoor slab without vehicles", 18, 4, 4, 6, 6),
    UNDER_STREETS_AND_DRIVEWAYS("under streets, roads, driveways, parking", 24, 24, 24, 24, 24),
    UNDER_A_DWELLINGS_DRIVEWAY("under the driveway of a one- or two-family dwelling", 18, 18, 18, 12, 18);

    /** Deep enough for the plow (common practice, no source). */
    public static final int TILLED_FIELD_IN = 36;

    private final String words;
    private final int[] inches;

    /** @param inches direct buried cable, rigid metal, PVC and others, a 120 V 20 A branch with GFCI, 30 V control */
    BurialCover(String words, int... inches) {
        this.words = words;
        this.inches = inches;
    }

    public String words() {
        return words;
    }

    /** Inches of cover; a cable under a building lies in a raceway. */
    public int leastIn(Raceway raceway) {
        return switch (raceway) {
            case DIRECT_BURIED, FREE_AIR -> inches[0];
            case RMC -> inches[1];
            case PVC_40, PVC_80, EMT -> inches[2];
        };
    }

    public int branchCircuitIn() {
        return inches[3];
    }

    public int controlCircuitIn() {
        return inches[4];
    }
}
