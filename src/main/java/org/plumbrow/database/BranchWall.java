package org.plumbrow.database;

import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * Which branches' rows the current thread may see and write. The database holds the same wall by row-level security:
 * each transaction carries this scope with it (see {@code BranchScopeListener}). Without a scope there are no rows.
 * <p>A scope holds for transactions that begin inside it: open it outside the transaction, not within.
 */
public final class BranchWall {

    private static final Scope NOTHING = new Scope(Set.of(), false);
    private static final ThreadLocal<Scope> CURRENT = ThreadLocal.withInitial(() -> NOTHING);

    private BranchWall() {}

    record Scope(Set<UUID> branches, boolean everywhere) {
        String branchList() {
            return new TreeSet<>(branches).stream().map(UUID::toString).collect(Collectors.joining(","));
        }

        String word() {
            return everywhere ? "all" : "branches";
        }
    }

    static Scope current() {
        return CURRENT.get();
    }

    /** Runs the work with the rows of these branches only. */
    public static <T> T within(Collection<UUID> branches, Supplier<T> work) {
        return with(new Scope(Set.copyOf(branches), false), work);
    }

    /** Runs the work with the rows of this branch only. */
    public static <T> T within(UUID branch, Supplier<T> work) {
        return within(Set.of(branch), work);
    }

    /** Runs the work with the rows of all branches: signing in, private links, the keeper of background work. */
    public static <T> T everywhere(Supplier<T> work) {
        return with(new Scope(Set.of(), true), work);
    }

    /** As {@link #everywhere(Supplier)}, for work without a result. */
    public static void everywhere(Runnable work) {
        everywhere(() -> {
            work.run();
            return Boolean.TRUE;
        });
    }

    private static <T> T with(Scope scope, Supplier<T> work) {
        Scope before = CURRENT.get();
        CURRENT.set(scope);
        try {
            return work.get();
        } finally {
            if (before.equals(NOTHING)) {
                CURRENT.remove();
            } else {
                CURRENT.set(before);
            }
        }
    }
}
