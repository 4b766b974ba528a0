package org.plumbrow.calc.planning;

import java.util.List;

/**
 * A kind of shared equipment.
 *
 * @param count how many the branch has, 0 or more
 * @param away when some of them are lent out or in repair
 */
public record Equipment(String id, String name, int count, List<Away> away) {

    /** So many pieces are not there from the first half-day to the last. */
    public record Away(int count, Absence when) {
        public Away {
            if (count < 1) {
                throw new IllegalArgumentException("pieces away must be at least 1: " + count);
            }
        }
    }

    public Equipment {
        if (count < 0) {
            throw new IllegalArgumentException("count of " + name + " must not be negative: " + count);
        }
        away = List.copyOf(away);
    }
}
