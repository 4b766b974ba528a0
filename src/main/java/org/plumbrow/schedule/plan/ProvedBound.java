package org.plumbrow.schedule.plan;

import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.planning.engine.Planned;

/**
 * What is proved about every other plan from the same input, with what is settled where it stands.
 *
 * @param lowerBound no plan has fewer weighted half-days late
 * @param lateAlone by project: half-days late in any plan; a project without an entry could be on time by itself
 */
record ProvedBound(long lowerBound, Map<UUID, Integer> lateAlone) {

    static ProvedBound of(Planned planned) {
        return new ProvedBound(
                planned.lowerBound(),
                planned.lateAlone().entrySet().stream()
                        .collect(Collectors.toMap(
                                late -> UUID.fromString(late.getKey().projectId()), Map.Entry::getValue, Math::max)));
    }

    int lateAlone(UUID projectId) {
        return lateAlone.getOrDefault(projectId, 0);
    }
}
