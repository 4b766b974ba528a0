package org.plumbrow.calc.planning.replan;

import org.plumbrow.calc.planning.search.BranchModel;
import org.plumbrow.calc.planning.search.Chance;
import org.plumbrow.calc.planning.search.Dates;
import org.plumbrow.calc.planning.search.Decoder;
import org.plumbrow.calc.planning.search.Due;
import org.plumbrow.calc.planning.search.Task;

/** What a search around a known plan draws by chance: what it changes, and by how much. */
final class Draws {

    private static final int NONE = -1;

    /** So often a promise is drawn before it is given up to find one that is late. */
    private static final int TRIES = 8;

    /** The earliest of one, two, four or eight is drawn, each as likely; by trials on moves of one work. */
    private static final int DRAW_SIZES = 4;

    private final KnownPlaces known;
    private final BranchModel model;
    private final Decoder decoder;
    private final Chance chance;
    private final int[] moved;

    Draws(KnownPlaces known, Decoder decoder, Chance chance) {
        this.known = known;
        this.decoder = decoder;
        this.chance = chance;
        model = known.model;
        moved = new int[model.size()];
    }

    /** A work of a crew, most often one that does not stand. */
    int work(Dates now) {
        int count = displaced(now);
        return isAny(count) ? chance.below(model.size()) : moved[chance.below(count)];
    }

    /** As {@link #work}, sooner one that starts early: what it pushes comes after it and stands when it does. */
    int earlyWork(Dates now) {
        int count = displaced(now);
        if (isAny(count)) {
            return chance.below(model.size());
        }
        int earliest = moved[chance.below(count)];
        for (int more = (1 << chance.below(DRAW_SIZES)) - 1; more > 0; more--) {
            int other = moved[chance.below(count)];
            earliest = start(other, now) < start(earliest, now) ? other : earliest;
        }
        return earliest;
    }

    /** The known start; of what is new where it stands now. */
    private int start(int number, Dates now) {
        return known.isKnown(number) ? known.start[number] : now.start[number];
    }

    private boolean isAny(int displaced) {
        return displaced == 0 || chance.below(8) == 0;
    }

    private int displaced(Dates now) {
        int count = 0;
        for (int number = 0; number < model.size(); number++) {
            if (model.tasks[number].kind == Task.Kind.CREW && !known.stands(number, now)) {
                moved[count++] = number;
            }
        }
        return count;
    }

    /** A project with a promise that is late; -1 where none is soon found. */
    int lateProject(Dates now) {
        for (int tries = 0; tries < TRIES && model.dues.length > 0; tries++) {
            Due due = model.dues[chance.below(model.dues.length)];
            if (due.project >= 0 && decoder.late(due, now) > 0) {
                return due.project;
            }
        }
        return NONE;
    }

    /**
     * Half-days sooner or later, never none: small ones as likely as wide ones.
     *
     * @param widths the widest is two to that power
     */
    int step(int widths) {
        int width = 1 << (1 + chance.below(widths));
        int by = chance.below(2 * width + 1) - width;
        return by == 0 ? 1 : by;
    }
}
