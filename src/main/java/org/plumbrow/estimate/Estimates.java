package org.plumbrow.estimate;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.finance.SelfUse;

/** The energy estimates of projects, always as of now: computed anew where anything they were made from has changed. */
public interface Estimates {

    /**
     * Of a project that the person who asks may see.
     *
     * @return empty while something is missing: weather in the library, an array's size, tilt or azimuth
     */
    Optional<EstimateFacts> of(UUID projectId);

    /** For background work and gate rules: nobody is asked for. */
    Optional<EstimateFacts> ofUnchecked(UUID projectId);

    /** All projects of a branch that have one, as last computed, in two queries: for the branch's book. */
    List<EstimateFacts> ofBranch(UUID branchId);

    /** What is missing for an estimate, in sentences; empty when there is one. */
    List<String> missing(UUID projectId);

    /**
     * What the estimate is computed from, for whoever computes on: another horizon, another tilt.
     *
     * @return empty as {@link #of}
     */
    Optional<EnergyInputs> inputs(UUID projectId);

    /** @return {@code double[8760]} of use in standard time, empty when it is not known hour by hour */
    Optional<double[]> useByHour(UUID projectId);

    /**
     * What of the first year's production the site uses itself: hour by hour where the use is known so, else month by month.
     *
     * @return empty without a yield or while a month's use is not known
     */
    Optional<SelfUse> selfUse(UUID projectId);
}
