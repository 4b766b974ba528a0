package org.plumbrow.calc.planning.search;

import java.util.Arrays;

/**
 * Serial schedule generation on arrays: the ready task with the smallest key takes the first place that is free. One
 * decoder serves one thread; decoding allocates nothing.
 */
public final class Decoder {

    /** What changes of a task while an order is decoded, in neighbouring numbers: to fetch them is what a large branch costs. */
    static final int ROW = 4;

    static final int RANK = 0;
    /** How many tasks that come before it have no dates yet. */
    private static final int OPEN = 1;
    /** The slot that what follows counts from: its start if it is a wait, else its end. */
    private static final int ANCHOR = 2;
    /** Where its row of what stays begins. */
    private static final int FLAT = 3;

    private static final int NOWHERE = -1;

    private final BranchModel model;
    private final FlatTasks flat;
    private final int[] numbers;
    private final FirstPlace first;
    private final int[] rows;
    private final int[] crewOfGroup;
    private final ReadyQueue ready;

    public Decoder(BranchModel model) {
        this.model = model;
        flat = model.flat;
        numbers = flat.numbers;
        first = new FirstPlace(model);
        rows = new int[ROW * model.size()];
        for (int number = 0; number < model.size(); number++) {
            rows[ROW * number + FLAT] = flat.row[number];
            rows[ROW * number + OPEN] = flat.predecessors[number];
        }
        crewOfGroup = new int[model.groups.length];
        ready = new ReadyQueue(model.tieRank);
    }

    /** A place to put dates in, for {@link #decode}. */
    public Dates emptyDates() {
        return new Dates(model.size());
    }

    public void decode(Order order, Dates into) {
        clear(order);
        into.unplaced = 0;
        into.disturbance = 0;
        int at = 0;
        while (!ready.isEmpty()) {
            int number = ready.remove();
            into.served[at++] = number;
            int row = rows[ROW * number + FLAT];
            rows[ROW * number + OPEN] = numbers[row + FlatTasks.PREDECESSORS];
            place(number, row, order, into);
            int next = row + FlatTasks.LINKS + 2 * numbers[row + FlatTasks.PREDECESSORS];
            int end = next + numbers[row + FlatTasks.SUCCESSORS];
            for (; next < end; next++) {
                int follower = ROW * numbers[next];
                if (--rows[follower + OPEN] == 0) {
                    ready.add(rows[follower + RANK]);
                }
            }
        }
        into.lateness = lateness(into);
    }

    private void clear(Order order) {
        first.clear();
        Arrays.fill(crewOfGroup, NOWHERE);
        ready.rank(order.key(), rows);
        for (int root : flat.roots) {
            ready.add(rows[ROW * root + RANK]);
        }
    }

    private void place(int number, int row, Order order, Dates into) {
        int kind = numbers[row + FlatTasks.KIND];
        int what = numbers[row + FlatTasks.WHAT];
        int from = Math.max(readyAt(row), order.notBefore()[number]);
        if (from >= model.slots.size) {
            noRoom(number, into);
        } else if (kind == FlatTasks.CREW) {
            byCrew(number, row, from, order.crew()[number], into);
        } else if (kind == FlatTasks.WAIT) {
            put(number, from, flat.tables[what][from], NOWHERE, into);
            rows[ROW * number + ANCHOR] = from;
        } else if (from + what > model.slots.size) {
            noRoom(number, into);
        } else {
            put(number, from, from + what - 1, NOWHERE, into);
        }
    }

    private void put(int number, int start, int finish, int crew, Dates into) {
        into.start[number] = start;
        into.finish[number] = finish;
        into.crew[number] = crew;
        rows[ROW * number + ANCHOR] = finish;
    }

    private int readyAt(int row) {
        int from = numbers[row + FlatTasks.RELEASE];
        int end = row + FlatTasks.LINKS + 2 * numbers[row + FlatTasks.PREDECESSORS];
        for (int link = row + FlatTasks.LINKS; link < end; link += 2) {
            int before = rows[ROW * numbers[link] + ANCHOR];
            from = Math.max(from, before >= model.slots.size ? before : flat.tables[numbers[link + 1]][before]);
        }
        return from;
    }

    private void noRoom(int number, Dates into) {
        put(number, model.slots.size, model.slots.size, NOWHERE, into);
        into.unplaced++;
    }

    private void byCrew(int number, int row, int from, int wanted, Dates into) {
        int group = numbers[row + FlatTasks.GROUP];
        int settled = group >= 0 ? crewOfGroup[group] : NOWHERE;
        CrewJob job = flat.jobs[numbers[row + FlatTasks.WHAT]];
        if (!first.take(job, from, settled != NOWHERE ? settled : wanted)) {
            noRoom(number, into);
            return;
        }
        put(number, first.start, first.finish, first.crew, into);
        if (group >= 0) {
            crewOfGroup[group] = first.crew;
        }
        if (numbers[row + FlatTasks.KNOWN_START] >= 0) {
            into.disturbance += into.moved(model, number);
        }
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
