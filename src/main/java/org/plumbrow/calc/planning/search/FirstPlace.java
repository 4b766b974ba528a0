package org.plumbrow.calc.planning.search;

import java.util.Arrays;

/**
 * The first place for a work among crews and equipment: with the crew that finishes it first, or first for its toll, among
 * equals one that nobody waits for, then the first in the problem's order. Crews that take equally long are looked at together; by itself only one
 * that would be away meanwhile, or that has to do it.
 */
final class FirstPlace {

    private static final int NOWHERE = -1;

    /** The place that was found. */
    int crew;

    int start;
    int finish;

    private final Slots slots;
    private final CrewBook[] books;
    private final TeamBook teams;
    private final Pool[] pools;
    private final int[][] free;
    private int bestIndex;
    private int bestLength;
    private boolean bestWaits;
    /** End and toll of the best, in parts of a half-day. */
    private int bestCost;
    /** Of the crews looked at. */
    private int toll;

    FirstPlace(BranchModel model) {
        slots = model.slots;
        books = Arrays.stream(model.crews).map(CrewBook::new).toArray(CrewBook[]::new);
        teams = new TeamBook(model);
        pools = model.pools;
        free = Arrays.stream(pools).map(pool -> pool.free.clone()).toArray(int[][]::new);
    }

    void clear() {
        for (CrewBook book : books) {
            book.clear();
        }
        teams.clear();
        for (int pool = 0; pool < free.length; pool++) {
            System.arraycopy(pools[pool].free, 0, free[pool], 0, free[pool].length);
        }
    }

    /**
     * Whether there is one, which is then booked.
     *
     * @param who the one crew that may, or what {@link Order} says of any
     */
    boolean take(CrewJob job, int from, int who) {
        crew = NOWHERE;
        bestCost = Integer.MAX_VALUE;
        bestWaits = true;
        toll = 0;
        if (who == Order.ANY) {
            for (Team team : job.teams()) {
                look(job, team, from);
            }
        } else if (who == Order.THRIFTY) {
            for (CrewJob.Tolled tolled : job.tolled()) {
                toll = tolled.toll();
                look(job, tolled.team(), from);
            }
        } else {
            int choice = Arrays.binarySearch(job.crews(), who);
            if (choice >= 0) {
                look(job, who, job.halfDays()[choice], from);
            }
        }
        if (crew == NOWHERE) {
            return false;
        }
        book(job);
        return true;
    }

    private void look(CrewJob job, Team team, int from) {
        long left = team.crews();
        int slot = teams.skip(team, from);
        while (left != 0) {
            int end = slots.end(slot, team.halfDays(), team.inTheWeather());
            if (isTooLate(end, team.firstCrew())) {
                return;
            }
            long open = teams.open(team.word(), left, slot, end);
            int scarce = open == 0 ? NOWHERE : lastShortage(job, slot, end);
            if (open == 0) {
                slot = left == team.crews() ? teams.learn(team, slot) : teams.nextStart();
            } else if (scarce != NOWHERE) {
                slot = scarce + 1;
            } else {
                takeFirst(team, open, slot, end, job, from);
                left &= ~open;
                slot++;
            }
        }
    }

    /** Of those open from that slot on; who is away meanwhile ends later and is looked at by itself. */
    private void takeFirst(Team team, long open, int slot, int end, CrewJob job, int from) {
        int first = team.word() << 6;
        long partlyAway = teams.partlyAway();
        long throughout = open & ~partlyAway;
        if (throughout != 0) {
            long atOnce = slot > from ? teams.free(team.word(), throughout, slot - 1) : throughout;
            boolean waits = atOnce == 0;
            int number = first + Long.numberOfTrailingZeros(waits ? throughout : atOnce);
            takeIfBest(number, books[number].days.indexAtOrAfter[slot], end - slot + 1, end, waits);
        }
        for (long rest = partlyAway; rest != 0; rest &= rest - 1) {
            look(job, first + Long.numberOfTrailingZeros(rest), team.halfDays(), from);
        }
    }

    private void look(CrewJob job, int number, int halfDays, int from) {
        CrewBook book = books[number];
        CrewDays days = book.days;
        int begun = days.indexAtOrAfter[from];
        int index = Math.max(begun, Math.min(book.firstFree(), days.present.length));
        while (index + halfDays <= days.present.length && !isTooLate(days.present[index + halfDays - 1], number)) {
            int length = days.length(index, halfDays, job.inTheWeather());
            if (length < 0) {
                return;
            }
            int busy = book.lastTaken(index, length);
            int end = days.present[index + length - 1];
            int scarce = busy == NOWHERE ? lastShortage(job, days.present[index], end) : NOWHERE;
            if (busy != NOWHERE) {
                index = book.nextFree(busy + 1);
            } else if (scarce != NOWHERE) {
                index = days.indexAtOrAfter[scarce + 1];
            } else {
                takeIfBest(number, index, length, end, waitsForCrew(book, index, from));
                return;
            }
        }
    }

    /** As the planner names its bound: an absence or a booking right before the start, if it might start earlier. */
    private static boolean waitsForCrew(CrewBook book, int index, int from) {
        CrewDays days = book.days;
        int slot = days.present[index];
        return slot > from && (!days.isPresent(slot - 1) || book.isTaken(index - 1));
    }

    private boolean isTooLate(int end, int number) {
        int cost = cost(end);
        return end >= slots.size || cost > bestCost || (cost == bestCost && !bestWaits && number > crew);
    }

    private int cost(int end) {
        return Tolls.UNIT * end + toll;
    }

    private void takeIfBest(int number, int index, int length, int end, boolean waits) {
        int cost = cost(end);
        if (cost < bestCost || (cost == bestCost && (waits == bestWaits ? number < crew : bestWaits))) {
            crew = number;
            start = books[number].days.present[index];
            finish = end;
            bestIndex = index;
            bestLength = length;
            bestWaits = waits;
            bestCost = cost;
        }
    }

    private int lastShortage(CrewJob job, int first, int last) {
        int found = NOWHERE;
        for (int need = 0; need < job.pools().length; need++) {
            int[] pieces = free[job.pools()[need]];
            int slot = last;
            while (slot >= first && slot > found && pieces[slot] >= job.pieces()[need]) {
                slot--;
            }
            found = slot >= first && slot > found ? slot : found;
        }
        return found;
    }

    private void book(CrewJob job) {
        books[crew].book(bestIndex, bestLength);
        teams.book(crew, start, finish);
        for (int need = 0; need < job.pools().length; need++) {
            int[] pieces = free[job.pools()[need]];
            for (int slot = start; slot <= finish; slot++) {
                pieces[slot] -= job.pieces()[need];
            }
        }
    }
}
