package org.plumbrow.branch;

/**
 * A row of a branch's own table, with what the edit page needs.
 *
 * @param row as the core computes with it
 * @param shipped the same row as it came with Plumbrow
 */
public record Kept<T>(T row, T shipped, long version) {

    public boolean changed() {
        return !row.equals(shipped);
    }
}
