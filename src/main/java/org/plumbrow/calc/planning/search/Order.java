package org.plumbrow.calc.planning.search;

import java.util.Arrays;

/**
 * What a search varies: who is served first, by whom, and what is held back.
 *
 * @param key of each task: the smaller is served first
 * @param crew of each task: its number, or {@link #ANY} for the crew that finishes first
 * @param notBefore of each task: a slot, 0 for as early as can be
 */
public record Order(int[] key, int[] crew, int[] notBefore) {

    public static final int ANY = -1;

    /** By urgency alone. */
    public static Order urgent(BranchModel model) {
        int[] any = new int[model.size()];
        Arrays.fill(any, ANY);
        return new Order(model.latestStart.clone(), any, new int[model.size()]);
    }

    /** Where the last of a project's tasks is served, which stands for all of them when projects change places. */
    public int place(int[] project) {
        return key[project[project.length - 1]];
    }

    public Order copy() {
        return new Order(key.clone(), crew.clone(), notBefore.clone());
    }
}
