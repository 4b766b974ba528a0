package org.plumbrow.cutover;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.outage.ranking.AnimalDays.FlockEvent;
import org.plumbrow.calc.outage.ranking.Factor;
import org.plumbrow.calc.outage.ranking.FactorKind;
import org.plumbrow.calc.outage.ranking.Verdict;
import org.plumbrow.cutover.ReadyRows.Said;
import org.plumbrow.cutover.ReadyRows.State;

/**
 * What the house knows the day before an outage.
 *
 * @param announced an outage is announced, or was held
 * @param suffers somebody wrote down what suffers without power
 * @param factors what its hour was judged by
 * @param said what people said of it
 * @param runAhead the generator's run that counts is planned and has not been yet
 * @param nextFlock the first catch or placement after the outage that is written
 */
record DayBefore(
        boolean announced,
        boolean suffers,
        List<Factor> factors,
        Map<ReadyItem, Said> said,
        boolean runAhead,
        @Nullable FlockEvent nextFlock) {

    static final DayBefore NOTHING = new DayBefore(false, false, List.of(), Map.of(), false, null);

    DayBefore {
        factors = List.copyOf(factors);
        said = Map.copyOf(said);
    }

    List<Factor> of(Set<FactorKind> kinds) {
        return factors.stream().filter(factor -> kinds.contains(factor.kind())).toList();
    }

    Optional<Factor> of(FactorKind kind) {
        return of(Set.of(kind)).stream().findFirst();
    }

    /** Those that do not keep their limit, also where the hour does not need them. */
    List<Factor> beyond(Set<FactorKind> kinds) {
        return of(kinds).stream()
                .filter(factor -> factor.isBroken() || factor.lacks() > 0)
                .toList();
    }

    boolean isOpen(Set<FactorKind> kinds) {
        return of(kinds).stream().anyMatch(factor -> factor.verdict() == Verdict.OPEN);
    }

    /** What somebody said of an item, if it was that. */
    Optional<Said> said(ReadyItem item, State state) {
        return Optional.ofNullable(said.get(item)).filter(one -> one.state() == state);
    }

    static Optional<FlockEvent> next(List<FlockEvent> events, LocalDateTime end) {
        return events.stream()
                .filter(event -> !event.at().isBefore(end))
                .min(java.util.Comparator.comparing(FlockEvent::at));
    }
}
