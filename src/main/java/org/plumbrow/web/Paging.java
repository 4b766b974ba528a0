package org.plumbrow.web;

/**
 * Where one is in a long list.
 *
 * @param number page, from 1
 * @param size rows a page
 * @param total rows in all
 */
public record Paging(int number, int size, long total) {

    public static final int ROWS = 50;

    /** The asked page of fifty rows, moved into the pages there are. */
    public static Paging of(int asked, long total) {
        int pages = (int) Math.max(1, (total + ROWS - 1) / ROWS);
        return new Paging(Math.min(Math.max(asked, 1), pages), ROWS, total);
    }

    public long first() {
        return total == 0 ? 0 : offset() + 1;
    }

    public long last() {
        return Math.min(total, offset() + size);
    }

    public long offset() {
        return (long) (number - 1) * size;
    }

    public boolean earlier() {
        return number > 1;
    }

    public boolean later() {
        return last() < total;
    }
}
