package org.plumbrow.estimate.place;

import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.survey.RoofCovering;

/**
 * How long coverings last in general: common practice, from memory, no published source. What the surveyor saw counts more.
 */
final class RoofLife {

    /** With fewer years left a new covering comes first. */
    static final int LEAST_LEFT = 15;

    static final String SOURCE = "Usual lives of coverings: common practice, no published source.";

    private static final Map<RoofCovering, Years> USUAL = Map.of(
            RoofCovering.ASPHALT, new Years(20, 30),
            RoofCovering.METAL_RIB, new Years(30, 45),
            RoofCovering.METAL_SEAM, new Years(40, 60),
            RoofCovering.TILE, new Years(50, 80),
            RoofCovering.MEMBRANE, new Years(20, 30),
            RoofCovering.SHEET_OLD, new Years(30, 50));

    private RoofLife() {}

    record Years(int least, int most) {}

    static Optional<Years> of(@Nullable RoofCovering covering) {
        return Optional.ofNullable(covering == null ? null : USUAL.get(covering));
    }
}
