package org.plumbrow.calc.planning.search;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Who of all crews is taken in each slot, as bits: a span of slots is looked at for 64 crews in one go. What a search has
 * learnt about a team stays true while an order is decoded, as bookings only come.
 */
final class TeamBook {

    private final int words;
    /** Of each slot and 64 crews: who is not taken, be it away. */
    private final long[] open;

    private final long[] settled;
    private final long[] away;
    /** Of each team and slot: no run begins from it on and before that one, which may have learnt more. */
    private final int[][] mayBegin;

    private final int[] unknown;
    /** Nothing is known of that slot and those behind it. */
    private int learnt;
    /** Of the span looked at last: who is away in it for some time. */
    private long partlyAway;

    private int nextStart;

    TeamBook(BranchModel model) {
        int size = model.slots.size;
        words = (model.crews.length >> 6) + 1;
        settled = new long[size * words];
        away = new long[size * words];
        Arrays.fill(settled, -1);
        for (int crew = 0; crew < model.crews.length; crew++) {
            CrewDays days = model.crews[crew];
            for (int slot = 0; slot < size; slot++) {
                if (!days.isPresent(slot)) {
                    away[at(slot, crew >> 6)] |= 1L << crew;
                } else if (days.isTaken(days.indexAtOrAfter[slot])) {
                    settled[at(slot, crew >> 6)] &= ~(1L << crew);
                }
            }
        }
        open = settled.clone();
        unknown = IntStream.range(0, size).toArray();
        mayBegin = new int[model.flat.teamCount][];
        Arrays.setAll(mayBegin, team -> unknown.clone());
    }

    private int at(int slot, int word) {
        return slot * words + word;
    }

    void clear() {
        System.arraycopy(settled, 0, open, 0, open.length);
        for (int[] next : mayBegin) {
            System.arraycopy(unknown, 0, next, 0, learnt);
        }
        learnt = 0;
    }

    void book(int crew, int start, int finish) {
        long others = ~(1L << crew);
        for (int slot = start; slot <= finish; slot++) {
            open[at(slot, crew >> 6)] &= others;
        }
    }

    /** The first slot from that one on in which a run of the team may begin, as far as is known. */
    int skip(Team team, int slot) {
        int[] next = mayBegin[team.number()];
        int at = slot;
        while (at < next.length && next[at] != at) {
            int further = next[at];
            if (further < next.length) {
                next[at] = next[further];
            }
            at = further;
        }
        return at;
    }

    /** That no run of the team begins in that slot, as was seen last; the next one in which one may. */
    int learn(Team team, int slot) {
        mayBegin[team.number()][slot] = nextStart;
        learnt = Math.max(learnt, slot + 1);
        return skip(team, nextStart);
    }

    /**
     * Who of some crews is there in the first slot and not taken from it to the last one; when nobody is,
     * {@link #nextStart} tells where else to look.
     */
    long open(int word, long crews, int start, int finish) {
        long some = crews;
        long gone = 0;
        int slot = finish;
        for (int at = at(finish, word); slot >= start; slot--, at -= words) {
            some &= open[at];
            if (some == 0) {
                nextStart = slot + 1;
                return 0;
            }
            gone |= away[at];
        }
        nextStart = start + 1;
        some &= ~away[at(start, word)];
        partlyAway = gone & some;
        return some;
    }

    /** Of the span looked at last: those open who are away in it for some time. */
    long partlyAway() {
        return partlyAway;
    }

    /** No start before that one can do, where the span looked at last does not. */
    int nextStart() {
        return nextStart;
    }

    /** Of some crews those that are there and not taken in a slot. */
    long free(int word, long crews, int slot) {
        return crews & open[at(slot, word)] & ~away[at(slot, word)];
    }
}
