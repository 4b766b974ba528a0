package org.plumbrow.calc.planning.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.ShiftSearch;
import org.plumbrow.calc.planning.search.Threads;

/**
 * Several searches over orders side by side, each with a chance of its own. What they find differs by a tenth and more, so
 * some short ones find more than a long one. The best counts, of equals the first: the number of threads changes the time
 * and nothing else.
 */
final class Chains {

    private final BranchModel model;
    private final long seed;
    private final int threads;
    private final BooleanSupplier stopped;

    Chains(BranchModel model, long seed, int threads, BooleanSupplier stopped) {
        this.model = model;
        this.seed = seed;
        this.threads = threads;
        this.stopped = stopped;
    }

    /**
     * @param starts one chain from each
     * @param decodings orders that all chains together may try
     */
    Order best(List<Order> starts, int decodings) {
        List<Callable<ShiftSearch>> chains = new ArrayList<>();
        for (Order start : starts) {
            long own = seed + chains.size();
            chains.add(() -> searched(start, own, decodings / starts.size()));
        }
        return Threads.all(chains, threads).stream()
                .min(Comparator.comparingLong(chain -> chain.dates().cost()))
                .map(ShiftSearch::best)
                .orElse(starts.get(0));
    }

    private ShiftSearch searched(Order start, long own, int decodings) {
        ShiftSearch chain = new ShiftSearch(model, start, own);
        chain.run(decodings, stopped);
        return chain;
    }
}
