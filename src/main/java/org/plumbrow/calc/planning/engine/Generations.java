package org.plumbrow.calc.planning.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Chance;
import org.plumbrow.calc.planning.search.Order;
import org.plumbrow.calc.planning.search.Threads;

/**
 * Many short searches instead of a long one, each from an order that serves some projects as one good order does and the
 * rest as another (a memetic algorithm: Moscato, Caltech Concurrent Computation Program report 826, 1989). What single
 * searches find differs by a tenth and more by their chance alone, and hardly gets better with more orders; what two of
 * them chose well goes together. The number of threads changes the time and nothing else.
 */
public final class Generations {

    /** Orders that one search tries; by trials at 150 and 300, where half as many did as well. */
    private static final int ORDERS_A_SEARCH = 2_000;

    /** Orders that are kept, the best. */
    private static final int KEPT = 12;

    /** Searches side by side, from pairs of those kept. */
    private static final int A_GENERATION = 6;

    /** Of a hundred projects so many are served as in the second order. By trials: 25 did as well as 50, or a little better. */
    private static final int FROM_SECOND = 25;

    /** One of the searches. */
    public interface Search {

        /** The same start, seed and number of orders give the same. */
        Found run(Order start, long seed, int decodings);
    }

    /**
     * What one search found.
     *
     * @param cost the less the better
     * @param lateness weighted half-days late
     * @param perfect no search need go on
     */
    public record Found(Order order, double cost, long lateness, boolean perfect) {}

    private final BranchModel model;
    private final Search search;
    private final int threads;
    private final Watch watch;
    private final Chance chance;
    private final List<Found> kept = new ArrayList<>();
    private long seed;

    public Generations(BranchModel model, Search search, long seed, int threads, Watch watch) {
        this.model = model;
        this.search = search;
        this.seed = seed;
        this.threads = threads;
        this.watch = watch;
        chance = new Chance(seed);
    }

    /**
     * The best order found, of equals the first.
     *
     * @param stage what is being done, in words, for whoever looks on
     * @param starts the first searches begin from these, one after the other
     * @param decodings orders that all searches together may try
     */
    public Order best(String stage, List<Order> starts, int decodings) {
        int searches = Math.max(starts.size(), decodings / ORDERS_A_SEARCH);
        int each = decodings / searches;
        List<Order> first = new ArrayList<>();
        for (int at = 0; at < Math.min(searches, Math.max(starts.size(), KEPT)); at++) {
            first.add(starts.get(at % starts.size()));
        }
        search(first, each);
        for (int done = first.size(); done < searches && goesOn(); done += A_GENERATION) {
            watch.progress(stage, done, searches, kept.get(0).lateness);
            search(mixed(Math.min(searches - done, A_GENERATION)), each);
        }
        return kept.isEmpty() ? starts.get(0) : kept.get(0).order;
    }

    private boolean goesOn() {
        return kept.size() > 1 && !watch.isStopped() && !kept.get(0).perfect;
    }

    private void search(List<Order> from, int decodings) {
        List<Callable<Found>> searches = new ArrayList<>();
        for (Order start : from) {
            long own = seed++;
            searches.add(() -> search.run(start, own, decodings));
        }
        Threads.all(searches, threads).stream().filter(this::isNew).forEach(kept::add);
        kept.sort(Comparator.comparingDouble(Found::cost));
        kept.subList(Math.min(KEPT, kept.size()), kept.size()).clear();
    }

    /** Orders that cost the same are nearly always the same. */
    private boolean isNew(Found found) {
        return kept.stream().noneMatch(each -> each.cost == found.cost);
    }

    private List<Order> mixed(int count) {
        List<Order> mixed = new ArrayList<>();
        for (int at = 0; at < count; at++) {
            int first = Math.min(chance.below(kept.size()), chance.below(kept.size()));
            int second = (first + 1 + chance.below(kept.size() - 1)) % kept.size();
            mixed.add(mixed(model, kept.get(first).order, kept.get(second).order, chance));
        }
        return mixed;
    }

    /** Most projects as the first order serves them, the others as the second. */
    static Order mixed(BranchModel model, Order first, Order second, Chance chance) {
        Order mixed = first.copy();
        for (int[] project : model.projects) {
            if (chance.below(100) < FROM_SECOND) {
                for (int number : project) {
                    mixed.key()[number] = second.key()[number];
                    mixed.crew()[number] = second.crew()[number];
                    mixed.notBefore()[number] = second.notBefore()[number];
                }
            }
        }
        return mixed;
    }
}
