package org.plumbrow.estimate;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;

/** The system as it is drawn; the design room supplies it. Without it, and without a design, the contract's system counts. */
public interface DesignedSystem {

    /** @return empty while the design lacks arrays or inverters */
    Optional<Designed> of(UUID projectId);

    /** @param source as a sentence's object: "design revision B", "the draft of the design" */
    record Designed(String source, List<Group> groups) {}

    /**
     * Arrays on one inverter, or on several alike.
     *
     * @param kwAc of all of them together
     * @param efficiency 0.8 to 1
     */
    record Group(String name, double kwAc, double efficiency, List<Array> arrays) {}

    /**
     * @param gammaPerK change of power with cell temperature, 1/K
     * @param rowWidthM slant height of a row; null where rows do not shade one another
     * @param rowPitchM row to row
     */
    record Array(
            String name,
            double kwDc,
            double tiltDeg,
            double azimuthDeg,
            Mounting mounting,
            double gammaPerK,
            @Nullable Double rowWidthM,
            @Nullable Double rowPitchM) {}
}
