package org.plumbrow.calc.planning.engine;

/**
 * How much work a plan may take, in units that are the same on every machine: the same effort and seed give the same plan,
 * whatever the threads.
 *
 * @param seed of all chance
 * @param decodings orders that the search tries, in many short searches; a thousand take about 0.1 s at 75 projects
 * @param rounds of the solver on four pieces of the plan each, at most
 * @param proofRounds of the search for a bound, at most
 * @param wholeWork deterministic seconds of the solver on the whole plan, for branches small enough
 * @param threads 1 or more
 */
public record Effort(long seed, int decodings, int rounds, int proofRounds, double wholeWork, int threads) {

    public Effort {
        if (decodings < 0 || rounds < 0 || proofRounds < 0 || wholeWork < 0 || threads < 1) {
            throw new IllegalArgumentException("no such effort: %d orders, %d rounds, %d rounds, %s, %d threads"
                    .formatted(decodings, rounds, proofRounds, wholeWork, threads));
        }
    }

    /** Orders a project in the background; by trials at 60, where 400 ended later on each of two seeds. */
    private static final int ORDERS_A_PROJECT = 1_000;

    private static final int LEAST_ORDERS = 20_000;
    private static final int MOST_ORDERS = 80_000;

    /** In the background: some seconds where little is late, a minute or two where much is. */
    public static Effort background(int projects, int threads) {
        int decodings = Math.max(LEAST_ORDERS, Math.min(MOST_ORDERS, ORDERS_A_PROJECT * projects));
        return new Effort(1, decodings, 40, 1_500, 1, threads);
    }
}
