package org.plumbrow.calc.planning.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.plumbrow.calc.planning.exact.Piece;
import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Chance;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Due;
import org.plumbrow.calc.planning.search.Task;

/** Chooses which part of a plan the solver may move: a late job with those in its way, or a stretch of time. */
final class Neighbourhood {

    /** How far a freed task may go beyond where it stands, in half-days. */
    private static final int REACH = 120;

    private final BranchModel model;
    private final Decoder decoder;
    private final Dates now;
    private final Chance chance;
    private final boolean[] free;
    private int works;

    Neighbourhood(BranchModel model, Decoder decoder, Dates now, Chance chance) {
        this.model = model;
        this.decoder = decoder;
        this.now = now;
        this.chance = chance;
        free = new boolean[model.size()];
    }

    /** @param most works of crews to free, about */
    Piece draw(int most) {
        int kind = chance.below(10);
        int late = lateProject();
        if (late >= 0 && kind < 6) {
            freeRivals(late, most);
        } else {
            freeWindow(most, kind >= 8);
        }
        freeBetween();
        int[] latest = new int[model.size()];
        for (int number = 0; number < latest.length; number++) {
            latest[number] = Math.min(model.slots.size - 1, now.start[number] + REACH);
        }
        return new Piece(model, now, free, latest, false);
    }

    /** Drawn by how much its lateness costs; -1 when nothing is late. */
    private int lateProject() {
        long sum = 0;
        for (Due due : model.dues) {
            sum += (long) due.weight * decoder.late(due, now);
        }
        double left = chance.share() * sum;
        for (Due due : model.dues) {
            left -= (double) due.weight * decoder.late(due, now);
            if (left < 0) {
                return due.project;
            }
        }
        return -1;
    }

    private void freeRivals(int project, int most) {
        freeProject(project, 0, Integer.MAX_VALUE);
        int from = Integer.MAX_VALUE;
        int to = 0;
        boolean[] crews = new boolean[model.crews.length];
        for (int number : model.projects[project]) {
            if (model.tasks[number].kind == Task.Kind.CREW) {
                from = Math.min(from, now.start[number]);
                to = Math.max(to, now.finish[number]);
                for (int crew : model.tasks[number].crews) {
                    crews[crew] = true;
                }
            }
        }
        List<Integer> rivals = new ArrayList<>();
        for (int number = 0; number < model.size(); number++) {
            boolean meets = now.crew[number] >= 0
                    && crews[now.crew[number]]
                    && now.finish[number] >= from - 40
                    && now.start[number] <= to;
            if (meets && !free[number]) {
                rivals.add(number);
            }
        }
        while (works < most && !rivals.isEmpty()) {
            int number = rivals.remove(chance.below(rivals.size()));
            freeProject(model.tasks[number].project, from - 40, to);
        }
    }

    private void freeProject(int project, int from, int to) {
        for (int number : model.projects[project]) {
            if (now.finish[number] >= from && now.start[number] <= to) {
                free(number);
            }
        }
    }

    /** Works of some time, of all crews or of those that can do what one of them does. */
    private void freeWindow(int most, boolean allCrews) {
        int[] works = workers();
        if (works.length == 0) {
            return;
        }
        int centre = works[chance.below(works.length)];
        boolean[] crews = new boolean[model.crews.length];
        for (int crew : model.tasks[centre].crews) {
            crews[crew] = true;
        }
        Integer[] near = Arrays.stream(works)
                .filter(number -> allCrews || crews[now.crew[number]])
                .boxed()
                .toArray(Integer[]::new);
        Arrays.sort(
                near,
                (one, two) -> Integer.compare(
                        Math.abs(now.start[one] - now.start[centre]), Math.abs(now.start[two] - now.start[centre])));
        for (int at = 0; at < near.length && this.works < most; at++) {
            free(near[at]);
        }
    }

    private int[] workers() {
        int count = 0;
        int[] found = new int[model.size()];
        for (int number = 0; number < found.length; number++) {
            if (now.crew[number] >= 0) {
                found[count++] = number;
            }
        }
        return Arrays.copyOf(found, count);
    }

    private void free(int number) {
        if (!free[number]) {
            free[number] = true;
            works += model.tasks[number].kind == Task.Kind.CREW ? 1 : 0;
        }
    }

    /** Waits and desk work hold nobody up: those of a touched project go along. */
    private void freeBetween() {
        boolean[] touched = new boolean[model.projects.length];
        for (int number = 0; number < free.length; number++) {
            touched[model.tasks[number].project] |= free[number];
        }
        for (int number = 0; number < free.length; number++) {
            if (touched[model.tasks[number].project] && model.tasks[number].kind != Task.Kind.CREW) {
                free[number] = true;
            }
        }
    }
}
