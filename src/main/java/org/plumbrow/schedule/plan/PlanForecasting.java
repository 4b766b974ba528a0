package org.plumbrow.schedule.plan;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.calc.planning.Plan;
import org.plumbrow.schedule.forecast.BranchForecast;
import org.plumbrow.schedule.forecast.MilestoneForecast;
import org.plumbrow.schedule.forecast.PlanForecasts;
import org.plumbrow.schedule.plan.PlanHead.State;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Forecasts the plan just computed, and the published one as things stand by now. */
@Component
class PlanForecasting {

    private final PlanRows rows;
    private final PlanForecasts forecasts;
    private final Clock clock;

    PlanForecasting(PlanRows rows, PlanForecasts forecasts, Clock clock) {
        this.rows = rows;
        this.forecasts = forecasts;
        this.clock = clock;
    }

    /** The published plan as it is stored. */
    record Known(UUID plan, List<PlannedRow> rows) {}

    /** The published plan of a branch; empty before the first. */
    @Transactional(readOnly = true)
    public Optional<Known> published(UUID branchId) {
        return rows.in(branchId, State.PUBLISHED).map(head -> new Known(head.id(), rows.activities(head.id())));
    }

    /** Both forecasts, not stored yet. @param publishedPlan whose forecast the second is; empty before the first plan */
    record Made(
            List<MilestoneForecast> ofComputed, Optional<UUID> publishedPlan, List<MilestoneForecast> ofPublished) {}

    /** Takes its time, so it is called outside a transaction. */
    Made make(BranchProblem branch, ComputedPlan computed, Optional<Known> published) {
        Instant now = clock.instant();
        List<MilestoneForecast> ofComputed = forecast(branch, computed, computed.plan(), now);
        return new Made(
                ofComputed,
                published.map(Known::plan),
                published
                        .map(known -> forecast(branch, computed, KnownPlan.of(known.rows()), now))
                        .orElse(List.of()));
    }

    private static List<MilestoneForecast> forecast(
            BranchProblem branch, ComputedPlan computed, Plan plan, Instant now) {
        return BranchForecast.of(computed.problem(), plan, branch.jobs(), people(branch), now);
    }

    /** Of one project in a plan that is only being thought about. */
    List<MilestoneForecast> of(BranchProblem branch, ComputedPlan computed, UUID projectId) {
        return BranchForecast.of(
                computed.problem(), computed.plan(), branch.jobs(), people(branch), clock.instant(), projectId::equals);
    }

    private static Map<UUID, Integer> people(BranchProblem branch) {
        return branch.crews().stream().collect(Collectors.toMap(PlanCrew::id, PlanCrew::people));
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
