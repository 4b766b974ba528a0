package org.plumbrow.calc.planning.search;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What decoding asks of every task, in one row of neighbouring numbers each: tasks are served in no order of theirs, so on
 * a large branch much of the time would go into fetching their objects from memory.
 */
final class FlatTasks {

    static final int KIND = 0;
    static final int RELEASE = 1;
    /** Half-days of a desk, the table of a wait, the job of a crew. */
    static final int WHAT = 2;

    static final int GROUP = 3;
    static final int KNOWN_START = 4;
    /** How many predecessors there are; two numbers each from {@link #LINKS} on, then the successors. */
    static final int PREDECESSORS = 5;

    static final int SUCCESSORS = 6;
    static final int LINKS = 7;

    static final int CREW = Task.Kind.CREW.ordinal();
    static final int DESK = Task.Kind.DESK.ordinal();
    static final int WAIT = Task.Kind.WAIT.ordinal();

    /** Of each task: where its row begins. */
    final int[] row;

    final int[] numbers;
    /** Of a link: the first slot ready by the slot in which a wait starts or a work ends; of a wait: its end by its start. */
    final int[][] tables;

    final CrewJob[] jobs;
    final int teamCount;
    /** Tasks that nothing precedes. */
    final int[] roots;
    /** Of each task: how many come before it. */
    final int[] predecessors;

    private final List<int[]> found = new ArrayList<>();
    private final Map<int[], Integer> tableNumbers = new IdentityHashMap<>();
    private final CrewJobs crewJobs;

    FlatTasks(Task[] tasks, int[][] successors, Tolls tolls) {
        crewJobs = new CrewJobs(tolls);
        row = new int[tasks.length];
        predecessors = new int[tasks.length];
        int size = 0;
        for (int number = 0; number < tasks.length; number++) {
            row[number] = size;
            predecessors[number] = tasks[number].predecessors.length;
            size += LINKS + 2 * predecessors[number] + successors[number].length;
        }
        numbers = new int[size];
        for (int number = 0; number < tasks.length; number++) {
            write(tasks[number], successors[number], row[number]);
        }
        tables = found.toArray(int[][]::new);
        jobs = crewJobs.jobs();
        teamCount = crewJobs.teamCount();
        roots = IntStream.range(0, tasks.length)
                .filter(number -> predecessors[number] == 0)
                .toArray();
    }

    private void write(Task task, int[] successors, int begin) {
        numbers[begin + KIND] = task.kind.ordinal();
        numbers[begin + RELEASE] = task.release;
        numbers[begin + WHAT] = what(task);
        numbers[begin + GROUP] = task.group;
        numbers[begin + KNOWN_START] = task.knownStart;
        numbers[begin + PREDECESSORS] = task.predecessors.length;
        numbers[begin + SUCCESSORS] = successors.length;
        int at = begin + LINKS;
        for (int link = 0; link < task.predecessors.length; link++) {
            numbers[at++] = task.predecessors[link];
            numbers[at++] = table(task.readyAfter[link]);
        }
        System.arraycopy(successors, 0, numbers, at, successors.length);
    }

    private int what(Task task) {
        if (task.wait != null) {
            return table(task.wait.finish());
        }
        return task.kind == Task.Kind.DESK ? task.halfDays[0] : crewJobs.numberOf(task);
    }

    private int table(int[] table) {
        return tableNumbers.computeIfAbsent(table, unknown -> {
            found.add(unknown);
            return found.size() - 1;
        });
    }
}
