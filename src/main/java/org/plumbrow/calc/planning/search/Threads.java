package org.plumbrow.calc.planning.search;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Parts of a search that know nothing of each other, on some threads. */
public final class Threads {

    private Threads() {}

    /**
     * What the parts give, in their order whatever the threads; nothing where the thread that asks is interrupted.
     *
     * @param threads 1 or more
     */
    public static <T> List<T> all(List<Callable<T>> parts, int threads) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<T> all = new ArrayList<>();
            for (Future<T> part : pool.invokeAll(parts)) {
                all.add(part.get());
            }
            return all;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return List.of();
        } catch (ExecutionException failed) {
            throw new IllegalStateException("a part of a search failed", failed.getCause());
        } finally {
            pool.shutdownNow();
        }
    }
}
