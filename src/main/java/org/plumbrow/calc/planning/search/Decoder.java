package org.plumbrow.calc.planning.search;

import java.util.Arrays;

/**
 * Serial schedule generation on arrays: the ready task with the smallest key takes the first place that is free. One
 * decoder serves one thread; decoding allocates nothing.
 */
public final class Decoder {

    private static final int NOWHERE = -1;

    private final BranchModel model;
    private final CrewBook[] books;
    private final int[][] free;
    private final int[] open;
    private final int[] crewOfGroup;
    private final LongHeap ready;
    private final int[] taskOfRank;
    /** The best place found for the task at hand. */
    private int bestIndex;

    private int bestLength;
    private int bestFinish;
    private boolean bestWaits;

    public Decoder(BranchModel model) {
        this.model = model;
        books = Arrays.stream(model.crews).map(CrewBook::new).toArray(CrewBook[]::new);
        free = Arrays.stream(model.pools).map(pool -> pool.free.clone()).toArray(int[][]::new);
        open = new int[model.size()];
        crewOfGroup = new int[model.groups.length];
        ready = new LongHeap(model.size() + 1);
        taskOfRank = new int[model.size()];
        for (int number = 0; number < taskOfRank.length; number++) {
            taskOfRank[model.tieRank[number]] = number;
        }
    }

    /** A place to put dates in, for {@link #decode}. */
    public Dates emptyDates() {
        return new Dates(model.size());
    }

    public void decode(Order order, Dates into) {
        clear();
        into.unplaced = 0;
        into.disturbance = 0;
        for (int number = 0; number < open.length; number++) {
            open[number] = model.tasks[number].predecessors.length;
            if (open[number] == 0) {
                ready.add(entry(order, number));
            }
        }
        int at = 0;
        while (!ready.isEmpty()) {
            int number = taskOfRank[(int) ready.remove()];
            into.served[at++] = number;
            place(number, order, into);
            for (int next : model.successors[number]) {
                if (--open[next] == 0) {
                    ready.add(entry(order, next));
                }
            }
        }
        into.lateness = lateness(into);
    }

    private void clear() {
        for (CrewBook book : books) {
            book.clear();
        }
        for (int pool = 0; pool < free.length; pool++) {
            System.arraycopy(model.pools[pool].free, 0, free[pool], 0, free[pool].length);
        }
        Arrays.fill(crewOfGroup, NOWHERE);
        ready.clear();
    }

    private long entry(Order order, int number) {
        return ((long) order.key()[number] << 32) | model.tieRank[number];
    }

    private void place(int number, Order order, Dates into) {
        Task task = model.tasks[number];
        int from = Math.max(readyAt(task, into), order.notBefore()[number]);
        if (from >= model.slots.size) {
            noRoom(number, into);
        } else if (task.kind == Task.Kind.WAIT) {
            into.start[number] = from;
            into.finish[number] = task.waitEnd(from);
            into.crew[number] = NOWHERE;
        } else if (task.kind == Task.Kind.DESK) {
            into.start[number] = from;
            into.finish[number] = from + task.halfDays[0] - 1;
            into.crew[number] = NOWHERE;
            if (into.finish[number] >= model.slots.size) {
                noRoom(number, into);
            }
        } else {
            byCrew(number, from, order.crew()[number], into);
        }
    }

    private int readyAt(Task task, Dates into) {
        int from = task.release;
        for (int link = 0; link < task.predecessors.length; link++) {
            int before = task.predecessors[link];
            boolean wait = model.tasks[before].kind == Task.Kind.WAIT;
            int anchor = wait ? into.start[before] : into.finish[before];
            int slot = anchor >= model.slots.size ? anchor : task.readyAfter[link][anchor];
            from = Math.max(from, slot);
        }
        return from;
    }

    private void noRoom(int number, Dates into) {
        into.start[number] = model.slots.size;
        into.finish[number] = model.slots.size;
        into.crew[number] = NOWHERE;
        into.unplaced++;
    }

    private void byCrew(int number, int from, int wanted, Dates into) {
        Task task = model.tasks[number];
        int settled = task.group >= 0 ? crewOfGroup[task.group] : NOWHERE;
        int only = settled != NOWHERE ? settled : wanted;
        int best = NOWHERE;
        bestFinish = Integer.MAX_VALUE;
        bestWaits = true;
        for (int choice = 0; choice < task.crews.length; choice++) {
            int crew = task.crews[choice];
            if ((only == NOWHERE || only == crew) && look(task, books[crew], task.halfDays[choice], from)) {
                best = crew;
            }
        }
        if (best == NOWHERE) {
            noRoom(number, into);
            return;
        }
        book(task, best, into, number);
    }

    private void book(Task task, int crew, Dates into, int number) {
        books[crew].book(bestIndex, bestLength);
        int start = books[crew].days.present[bestIndex];
        for (int need = 0; need < task.pools.length; need++) {
            int[] pieces = free[task.pools[need]];
            for (int slot = start; slot <= bestFinish; slot++) {
                pieces[slot] -= task.pieces[need];
            }
        }
        if (task.group >= 0) {
            crewOfGroup[task.group] = crew;
        }
        into.start[number] = start;
        into.finish[number] = bestFinish;
        into.crew[number] = crew;
        into.disturbance += into.moved(model, number);
    }

    /** Whether this crew finishes it earlier than the best so far, or as early without having to wait for the crew. */
    private boolean look(Task task, CrewBook book, int halfDays, int from) {
        CrewDays days = book.days;
        int index = Math.max(days.indexAtOrAfter[from], Math.min(book.firstFree(), days.present.length));
        if (index + halfDays > days.present.length || isTooLate(days.present[index + halfDays - 1])) {
            return false;
        }
        boolean waits = index != days.indexAtOrAfter[from];
        while (true) {
            int length = days.length(index, halfDays, task.inTheWeather);
            if (length < 0 || isTooLate(days.present[index + length - 1])) {
                return false;
            }
            int busy = book.lastTaken(index, length);
            if (busy != NOWHERE) {
                waits = true;
                index = book.nextFree(busy + 1);
            } else {
                int start = days.present[index];
                int finish = days.present[index + length - 1];
                int scarce = lastShortage(task, start, finish);
                if (scarce == NOWHERE) {
                    return isBest(days, index, length, finish, waitsForCrew(days, start, from, waits));
                }
                waits = false;
                index = days.indexAtOrAfter[scarce + 1];
            }
            if (index + halfDays > days.present.length) {
                return false;
            }
        }
    }

    /** One that ends with the best so far is taken only if that one has to wait for its crew. */
    private boolean isTooLate(int finish) {
        return finish > bestFinish || (finish == bestFinish && !bestWaits);
    }

    /** As the planner names its bound: an absence right before the start, else what was met last. */
    private static boolean waitsForCrew(CrewDays days, int start, int from, boolean waits) {
        return waits || (start > from && !days.isPresent(start - 1));
    }

    private boolean isBest(CrewDays days, int index, int length, int finish, boolean waits) {
        if (finish > bestFinish || (finish == bestFinish && (waits || !bestWaits))) {
            return false;
        }
        bestIndex = index;
        bestLength = length;
        bestFinish = finish;
        bestWaits = waits;
        return true;
    }

    private int lastShortage(Task task, int start, int finish) {
        int last = NOWHERE;
        for (int need = 0; need < task.pools.length; need++) {
            int[] pieces = free[task.pools[need]];
            int slot = finish;
            while (slot >= start && slot > last && pieces[slot] >= task.pieces[need]) {
                slot--;
            }
            last = slot >= start && slot > last ? slot : last;
        }
        return last;
    }

    private long lateness(Dates dates) {
        long sum = model.settledLateness;
        for (Due due : model.dues) {
            sum += (long) due.weight * late(due, dates);
        }
        return sum;
    }

    /** Half-days late of one promise. */
    public int late(Due due, Dates dates) {
        int late = due.settled;
        for (int number : due.tasks) {
            int finish = dates.finish[number];
            if (finish >= model.slots.size) {
                continue;
            }
            boolean wait = model.tasks[number].kind == Task.Kind.WAIT;
            long day = wait ? model.tasks[number].waitEndDay(dates.start[number]) : model.slots.day(finish);
            late = Math.max(late, due.late(finish, day));
        }
        return late;
    }
}
