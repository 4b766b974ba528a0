package org.plumbrow.schedule.plan;

import java.time.Clock;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.planning.Bound;
import org.plumbrow.calc.planning.Placement;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.schedule.forecast.BranchForecast;
import org.plumbrow.schedule.forecast.MilestoneForecast;
import org.plumbrow.schedule.forecast.PlanForecasts;
import org.plumbrow.schedule.plan.PlanHead.State;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;

/** Forecasts the plan just computed, and the published one as things stand by now. */
@Component
class PlanForecasting {

    private final PlanRows rows;
    private final PlanForecasts forecasts;
    private final TransactionTemplate transaction;
    private final Clock clock;

    PlanForecasting(PlanRows rows, PlanForecasts forecasts, TransactionTemplate transaction, Clock clock) {
        this.rows = rows;
        this.forecasts = forecasts;
        this.transaction = transaction;
        this.clock = clock;
    }

    /** Both forecasts, not stored yet. @param publishedPlan whose forecast the second is; empty before the first plan */
    record Made(
            List<MilestoneForecast> ofComputed, Optional<UUID> publishedPlan, List<MilestoneForecast> ofPublished) {}

    /** Takes its time, so it is called outside a transaction. */
    Made make(UUID branchId, BranchProblem branch, ComputedPlan computed) {
        Instant now = clock.instant();
        List<MilestoneForecast> ofComputed = forecast(branch, computed, computed.plan(), now);
        Optional<PlanHead> published = transaction.execute(status -> rows.in(branchId, State.PUBLISHED));
        if (published.isEmpty()) {
            return new Made(ofComputed, Optional.empty(), List.of());
        }
        UUID id = published.get().id();
        List<PlannedRow> planned = transaction.execute(status -> rows.activities(id));
        return new Made(ofComputed, Optional.of(id), forecast(branch, computed, plan(planned), now));
    }

    private static List<MilestoneForecast> forecast(
            BranchProblem branch, ComputedPlan computed, Plan plan, Instant now) {
        Map<UUID, Integer> people = branch.crews().stream().collect(Collectors.toMap(PlanCrew::id, PlanCrew::people));
        return BranchForecast.of(computed.problem(), plan, branch.jobs(), people, now);
    }

    /** As it is stored: a forecast asks where things stand, not why. */
    private static Plan plan(List<PlannedRow> rows) {
        Map<String, Placement> placements = new LinkedHashMap<>();
        for (PlannedRow row : rows) {
            String id = row.activityId().toString();
            placements.put(
                    id,
                    new Placement(id, row.start(), row.finish(), row.crewId().map(UUID::toString), new Bound.Today()));
        }
        return new Plan(placements, List.of(), List.of());
    }

    /** @param computedPlan under whose id the computed plan is stored; empty when it was thrown away as nothing new */
    @Transactional(propagation = Propagation.MANDATORY)
    public void store(UUID branchId, Made made, Optional<UUID> computedPlan) {
        computedPlan.ifPresent(id -> forecasts.replace(id, branchId, made.ofComputed()));
        made.publishedPlan()
                .filter(id -> rows.head(id)
                        .filter(head -> head.state() == State.PUBLISHED)
                        .isPresent())
                .ifPresent(id -> forecasts.replace(id, branchId, made.ofPublished()));
    }
}
