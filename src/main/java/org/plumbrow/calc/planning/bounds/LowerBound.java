package org.plumbrow.calc.planning.bounds;

import java.util.List;
import java.util.function.BooleanSupplier;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Due;

/** The largest bound that a given amount of work proves: chains first, then rented crews. */
public final class LowerBound {

    private final BranchModel model;
    private final Dates plan;
    private final Places places;
    private final ChainBound chains;
    private long value;
    private List<int[]> wishes = List.of();

    /** @param plan the best plan so far; it places every task of the model */
    public LowerBound(BranchModel model, Dates plan) {
        this.model = model;
        this.plan = plan;
        places = new Places(model);
        chains = new ChainBound(model, places);
        value = chains.value();
    }

    /** Weighted half-days late that no plan undercuts. */
    public long value() {
        return value;
    }

    /** Half-days that one promise is late in any plan, because of its own chain of work and waits. */
    public int late(Due due) {
        return chains.late(due);
    }

    /**
     * What a search for prices saw at some moments: of each task the slot in which it would start if all paid for their
     * crews, -1 where no promise waits for it. The first moments know least of crews, yet often make the better orders.
     */
    public List<int[]> wishes() {
        return wishes;
    }

    public boolean isReached() {
        return value >= plan.lateness();
    }

    /**
     * @param rounds of the search for prices, as many as it takes at most
     * @param threads which change the time and nothing else
     */
    public void rent(int rounds, int threads, BooleanSupplier stopped) {
        if (isReached() || rounds <= 0) {
            return;
        }
        PriceBound prices = new PriceBound(model, chains, places, plan, threads);
        prices.run(rounds, stopped);
        value = Math.max(value, prices.value());
        wishes = prices.wishes();
    }
}
