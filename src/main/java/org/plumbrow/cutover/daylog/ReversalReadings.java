package org.plumbrow.cutover.daylog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.plumbrow.calc.electrical.Service;
import org.plumbrow.calc.electrical.Service.Band;
import org.plumbrow.calc.outage.SupplyRestored;

/**
 * What is read on the way back, once the utility has closed and before any load returns: every pair and the rotation, as
 * before the work. Never says that anything may be touched.
 */
record ReversalReadings(LogState state, Readings readings) {

    /**
     * Between what a pair must lie; an end is left open where nothing bounds the reading.
     *
     * @param must which way the phases turned before; empty for a number, or before anybody has looked
     */
    record Limits(Optional<Double> least, Optional<Double> most, Optional<String> must) {
        private static final Limits NONE = new Limits(Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** What keeps the loads off; empty when all was read since the reversal began and is as it has to be. */
    List<String> against() {
        SupplyRestored restored = readings.restored(state);
        List<String> against = new ArrayList<>();
        restored.refusals().forEach(refusal -> against.add(refusal + " The loads stay off: the utility opens again."));
        if (against.isEmpty()) {
            restored.missing().forEach(what -> against.add(what + ": not read since the reversal began."));
        }
        return against;
    }

    /** Range A for a pair that lay inside before; Range B for one that did not, or that nobody has read. */
    Limits limits(Asked asked) {
        if (asked.quantity().equals(Readings.ROTATION)) {
            return new Limits(
                    Optional.empty(), Optional.empty(), state.value(Procedure.READ_BEFORE, Readings.ROTATION));
        }
        return readings.service().pairs().stream()
                .filter(pair -> pair.code().equals(asked.quantity()))
                .findFirst()
                .map(this::limits)
                .orElse(Limits.NONE);
    }

    private Limits limits(Service.Pair pair) {
        Service.Limits volts = pair.limits();
        boolean wasInside = state.value(Procedure.READ_BEFORE, pair.code())
                .map(before -> volts.band(Double.parseDouble(before)) == Band.A)
                .orElse(false);
        return new Limits(
                Optional.of(wasInside ? volts.aLeastV() : volts.bLeastV()),
                Optional.of(wasInside ? volts.aMostV() : volts.bMostV()),
                Optional.empty());
    }
}
