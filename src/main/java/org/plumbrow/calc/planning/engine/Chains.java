package org.plumbrow.calc.planning.engine;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.ShiftSearch;

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
        ShiftSearch[] chains = new ShiftSearch[starts.size()];
        int parts = Math.min(threads, chains.length);
        IntStream parted = IntStream.range(0, parts);
        (parts > 1 ? parted.parallel() : parted).forEach(part -> {
            for (int chain = part; chain < chains.length; chain += parts) {
                chains[chain] = new ShiftSearch(model, starts.get(chain), seed + chain);
                chains[chain].run(decodings / chains.length, stopped);
            }
        });
        return Arrays.stream(chains)
                .min(Comparator.comparingLong(chain -> chain.dates().cost()))
                .orElseThrow()
                .best();
    }
}
