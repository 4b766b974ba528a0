package org.plumbrow.calc.outage.ranking;

import java.time.LocalDateTime;
import java.util.List;

/**
 * What would have to give so that an hour becomes a window.
 *
 * @param start the hour that needs least
 * @param factors the only ones that are broken then, one or two, each with what it lacks
 * @param size how much that is, in steps of {@link FactorKind}; smaller is easier
 */
public record Relaxation(LocalDateTime start, List<Factor> factors, double size) {

    public Relaxation {
        factors = List.copyOf(factors);
    }

    /** Must a circumstance change, because a limit protects people, animals or milk? */
    public boolean changesCircumstance() {
        return factors.stream().anyMatch(factor -> factor.kind().protectsLife());
    }

    public List<String> sentences() {
        return factors.stream().map(Factor::cure).toList();
    }
}
