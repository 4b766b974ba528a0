package org.plumbrow.calc.planning.singleproject;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Reads a project of the public library of scheduling problems, single mode, file name {@code .sm} (R. Kolisch, A.
 * Sprecher, "PSPLIB, a project scheduling problem library", European Journal of Operational Research 96 (1997) 205–216).
 * Only renewable resources are taken; a second mode, non-renewable or doubly constrained resources are refused.
 */
public final class ProjectText {

    private static final String JOBS = "jobs (incl. supersource/sink )";
    private static final int BEFORE_SUCCESSORS = 3;

    private final List<String> lines;
    private int at;

    private ProjectText(String text) {
        this.lines = text.lines().toList();
    }

    /** @throws UnreadableProject where a line does not say what it should */
    public static SingleProject read(String text) {
        return new ProjectText(text).project();
    }

    private SingleProject project() {
        int jobs = figureOf(JOBS);
        int renewable = figureOf("- renewable");
        refuseAny("- nonrenewable");
        refuseAny("- doubly constrained");
        List<List<Integer>> successors = successors(jobs);
        List<SingleProject.Step> steps = steps(jobs, renewable, successors);
        goTo("RESOURCEAVAILABILITIES");
        at++;
        List<Integer> capacities = numbers();
        if (capacities.size() != renewable) {
            throw unreadable(renewable + " availabilities are needed, here are " + capacities.size());
        }
        try {
            return new SingleProject(capacities, steps);
        } catch (IllegalArgumentException e) {
            throw unreadable(e.getMessage());
        }
    }

    private List<List<Integer>> successors(int jobs) {
        goTo("PRECEDENCE RELATIONS");
        at++;
        List<List<Integer>> successors = new ArrayList<>();
        for (int job = 1; job <= jobs; job++) {
            List<Integer> row = rowOf(job, BEFORE_SUCCESSORS);
            List<Integer> named = row.subList(BEFORE_SUCCESSORS, row.size());
            if (row.get(1) != 1) {
                throw unreadable("job " + job + " has " + row.get(1) + " modes; one is taken");
            }
            if (row.get(2) != named.size()) {
                throw unreadable("job " + job + " has " + row.get(2) + " successors, " + named.size() + " are named");
            }
            successors.add(named.stream().map(successor -> successor - 1).toList());
        }
        return successors;
    }

    private List<SingleProject.Step> steps(int jobs, int renewable, List<List<Integer>> successors) {
        goTo("REQUESTS/DURATIONS");
        at += 2;
        List<SingleProject.Step> steps = new ArrayList<>();
        for (int job = 1; job <= jobs; job++) {
            List<Integer> row = rowOf(job, BEFORE_SUCCESSORS + renewable);
            if (row.get(2) < 0) {
                throw unreadable("job " + job + " lasts " + row.get(2) + " periods");
            }
            List<Integer> demands = row.subList(BEFORE_SUCCESSORS, BEFORE_SUCCESSORS + renewable);
            steps.add(new SingleProject.Step(row.get(2), demands, successors.get(job - 1)));
        }
        return steps;
    }

    private List<Integer> rowOf(int job, int atLeast) {
        List<Integer> row = numbers();
        if (row.size() < atLeast || row.get(0) != job) {
            throw unreadable("the row of job " + job + " is looked for, with " + atLeast + " numbers or more");
        }
        return row;
    }

    /** The numbers of the next line. */
    private List<Integer> numbers() {
        at++;
        if (at >= lines.size()) {
            throw unreadable("numbers are looked for, but the text ends");
        }
        try {
            return Arrays.stream(lines.get(at).strip().split("\\s+"))
                    .map(Integer::valueOf)
                    .toList();
        } catch (NumberFormatException e) {
            throw unreadable("numbers are looked for, not \"" + lines.get(at).strip() + "\"");
        }
    }

    private void refuseAny(String label) {
        int count = figureOf(label);
        if (count != 0) {
            throw unreadable("only renewable resources are taken");
        }
    }

    /** The first number behind the colon of the line that begins so. */
    private int figureOf(String label) {
        goTo(label);
        String line = lines.get(at);
        String behind = line.substring(line.indexOf(':') + 1).strip();
        try {
            int figure = Integer.parseInt(behind.split("\\s+")[0]);
            if (figure >= 0) {
                return figure;
            }
        } catch (NumberFormatException e) {
            // said below, with the line
        }
        throw unreadable("a number is looked for behind \"" + label + "\"");
    }

    private void goTo(String label) {
        int from = at;
        while (at < lines.size()
                && !lines.get(at).strip().toLowerCase(Locale.ROOT).startsWith(label.toLowerCase(Locale.ROOT))) {
            at++;
        }
        if (at >= lines.size()) {
            at = from;
            throw unreadable("\"" + label + "\" is looked for from here on and not found");
        }
    }

    private UnreadableProject unreadable(String what) {
        return new UnreadableProject(Math.min(at + 1, Math.max(1, lines.size())), what);
    }
}
