package org.plumbrow.schedule.plan;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.planning.Plan;
import org.springframework.stereotype.Component;

/**
 * Plans that pages compute, the latest kept in memory: of the same branch, day and published plan comes the same plan, so
 * a comparison that is opened again plans only what is new in it. Any number of threads may ask.
 */
@Component
class PlansAtOnce {

    /** A plan of 150 projects takes about a megabyte. */
    private static final int MOST = 24;

    private final Map<Key, Plan> kept = new LinkedHashMap<>(MOST, 0.75F, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Plan> eldest) {
            return size() > MOST;
        }
    };

    private record Key(String fingerprint, UUID publishedPlan) {}

    /** The published plan kept as far as it can be, or the branch planned by urgency before the first. */
    ComputedPlan of(BranchProblem branch, Optional<PlanForecasting.Known> published) {
        return published.map(known -> keeping(branch, known)).orElseGet(() -> ComputedPlan.of(branch));
    }

    private ComputedPlan keeping(BranchProblem branch, PlanForecasting.Known known) {
        return ComputedPlan.keeping(branch, problem -> {
            Key key = new Key(PlanFingerprint.of(problem), known.plan());
            return find(key)
                    .orElseGet(() -> keep(key, ComputedPlan.leastChange(problem, known.rows(), branch.today())));
        });
    }

    private Optional<Plan> find(Key key) {
        synchronized (kept) {
            return Optional.ofNullable(kept.get(key));
        }
    }

    private Plan keep(Key key, Plan plan) {
        synchronized (kept) {
            kept.put(key, plan);
        }
        return plan;
    }
}
