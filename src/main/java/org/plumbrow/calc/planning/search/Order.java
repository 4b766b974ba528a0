package org.plumbrow.calc.planning.search;

import java.util.Arrays;

/**
 * What a search varies: who is served first, by whom, and what is held back.
 *
 * @param key of each task: the smaller is served first
 * @param crew of each task: its number, {@link #ANY} or {@link #THRIFTY}
 * @param notBefore of each task: a slot, 0 for as early as can be
 */
public record Order(int[] key, int[] crew, int[] notBefore) {

    /** The crew that finishes first. */
    public static final int ANY = -1;

    /** The crew that finishes early for what its time is worth ({@link Tolls}). */
    public static final int THRIFTY = -2;

    /** By urgency alone. */
    public static Order urgent(BranchModel model) {
        int[] any = new int[model.size()];
        Arrays.fill(any, ANY);
        return new Order(model.latestStart.clone(), any, new int[model.size()]);
    }

    /** The same sequence, every work by a crew that is spent thriftily. */
    public Order thrifty() {
        int[] thrifty = new int[crew.length];
        Arrays.fill(thrifty, THRIFTY);
        return new Order(key.clone(), thrifty, notBefore.clone());
    }

    /** Where the last of a project's tasks is served, which stands for all of them when projects change places. */
    public int place(int[] project) {
        return key[project[project.length - 1]];
    }

    public Order copy() {
        return new Order(key.clone(), crew.clone(), notBefore.clone());
    }
}
