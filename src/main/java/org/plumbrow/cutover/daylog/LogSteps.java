package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.daylog.LogPen.Said;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;

/** Doing a step: its readings, then the tap that says it is done. */
@Service
public class LogSteps {

    static final int MOST_NAME = 120;
    static final String NAME_TOO_LONG = "A name has at most 120 characters.";

    private final LogPen pen;

    LogSteps(LogPen pen) {
        this.pen = pen;
    }

    /**
     * What a person sends of a step.
     *
     * @param typed by quantity; blank ones were left out
     * @param stays why a reading outside its limits stays, by quantity
     * @param at when it was done, if not now
     * @param seen what the page showed when it was opened, by quantity; none for a quantity is not compared
     * @param who who did it; empty for the person who writes
     */
    public record Work(
            UUID entryId,
            String step,
            Map<String, String> typed,
            Map<String, String> stays,
            @Nullable LocalTime at,
            Map<String, String> seen,
            String who) {

        /** By the person who writes, on a fresh page. */
        Work(UUID entryId, String step, Map<String, String> typed, Map<String, String> stays, @Nullable LocalTime at) {
            this(entryId, step, typed, stays, at, Map.of(), "");
        }

        /** Without what only repeats an older value that somebody has replaced meanwhile. */
        Work without(Map<String, String> replaced) {
            Map<String, String> fresh = new HashMap<>(typed);
            replaced.keySet().forEach(fresh::remove);
            return new Work(entryId, step, fresh, stays, at, seen, who);
        }
    }

    /** Stores what was read, whatever else is missing. */
    Said read(UUID projectId, Work work) {
        return pen.write(projectId, work.entryId(), writing -> {
            List<Refusal> refusals = against(writing, work, false);
            return refusals.isEmpty() ? stored(writing, work) : Said.refused(refusals);
        });
    }

    /** Stores what was read and, if nothing is missing or to be asked about, that the step is done. */
    public Said done(UUID projectId, Work work) {
        return pen.write(projectId, work.entryId(), writing -> done(writing, work));
    }

    private static Said done(Writing writing, Work work) {
        List<Refusal> refusals = against(writing, work, true);
        if (!refusals.isEmpty()) {
            return Said.refused(refusals);
        }
        StepReadings readings = new StepReadings(writing, work);
        List<Refusal> open = new ArrayList<>(readings.twice());
        boolean twice = !open.isEmpty();
        List<String> stored = readings.store();
        open.addAll(readings.open());
        if (!open.isEmpty()) {
            return new Said(open, sentence(writing, work, stored), twice);
        }
        Instant at = writing.at(work.at());
        writing.done(work.entryId(), work.step(), work.who().strip(), at);
        String read = stored.isEmpty() ? "" : " " + Said.begun(String.join("; ", stored)) + ".";
        return Said.stored(title(writing, work) + " is done, " + writing.clock(at) + "." + read);
    }

    /** The tap is in the log, and was put right on the phone before its answer came. */
    Said putRight(UUID projectId, Work work) {
        return pen.write(projectId, Ids.next(), writing -> {
            StepReadings readings = new StepReadings(writing, work);
            List<Refusal> refusals = readings.notValues();
            return refusals.isEmpty()
                    ? Said.stored(sentence(writing, work, readings.storePutRight()))
                    : Said.refused(refusals);
        });
    }

    /** Keeps the readings; both of two that came at the same time, and says so. */
    private static Said stored(Writing writing, Work work) {
        StepReadings readings = new StepReadings(writing, work);
        List<Refusal> twice = readings.twice();
        return new Said(twice, sentence(writing, work, readings.store()), !twice.isEmpty());
    }

    private static String sentence(Writing writing, Work work, List<String> stored) {
        return stored.isEmpty() ? "" : title(writing, work) + ": " + String.join("; ", stored) + ".";
    }

    private static String title(Writing writing, Work work) {
        LogStep step = writing.state().step(work.step());
        return step.title().toLowerCase(java.util.Locale.ROOT) + " (" + step.words() + ")";
    }

    private static List<Refusal> against(Writing writing, Work work, boolean finished) {
        List<Refusal> refusals = mayBeWritten(writing, work.step());
        refusals.addAll(new StepReadings(writing, work).notValues());
        String named = writing.state().step(work.step()).named();
        if (finished && named != null && work.who().strip().length() < 2) {
            refusals.add(new Refusal("who", "Write the name: " + named + "."));
        }
        if (work.who().strip().length() > MOST_NAME) {
            refusals.add(new Refusal("who", NAME_TOO_LONG));
        }
        writing.against(work.at()).ifPresent(refusals::add);
        return refusals;
    }

    /** A step may be written only when the hold point before it is signed. */
    static List<Refusal> mayBeWritten(Writing writing, String code) {
        List<Refusal> refusals = new ArrayList<>();
        LogState state = writing.state();
        LogStep step = state.step(code);
        if (writing.log().isClosed()) {
            refusals.add(Refusal.ofForm("This log is closed. What is wrong in it can be corrected, with a reason."));
        } else if (step.hold()) {
            refusals.add(Refusal.ofForm("Hold point " + code + " is passed by signatures, not by a tap."));
        } else if (!step.applies()) {
            refusals.add(Refusal.ofForm("Step " + code + " does not apply: " + step.whyNot() + "."));
        } else if (state.reversedAt().isPresent() && !code.equals(Procedure.UTILITY_CLOSES)) {
            refusals.add(Refusal.ofForm("The work is being reversed. Say when the power is back on."));
        } else if (state.reversedAt().isEmpty()) {
            state.holdBefore(code)
                    .ifPresent(hold -> refusals.add(Refusal.ofForm("Hold point " + hold.code()
                            + " is not signed. Nobody goes on to step " + code + " without it.")));
        }
        return refusals;
    }
}
