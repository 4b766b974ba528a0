package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.daylog.LogPen.Said;
import org.plumbrow.cutover.daylog.LogState.Effective;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;

/** Doing a step: its readings, then the tap that says it is done. */
@Service
public class LogSteps {

    private final LogPen pen;

    LogSteps(LogPen pen) {
        this.pen = pen;
    }

    /**
     * What a person sends of a step.
     *
     * @param typed by quantity; blank ones were left out
     * @param stays quantities that were read twice and stay outside their limits
     * @param at when it was done, if not now
     */
    public record Work(
            UUID entryId,
            String step,
            Map<String, String> typed,
            Set<String> stays,
            @Nullable LocalTime at) {}

    /** Stores what was read, whatever else is missing. */
    Said read(UUID projectId, Work work) {
        return pen.write(projectId, work.entryId(), writing -> read(writing, work));
    }

    /** Stores what was read and, if nothing is missing or to be asked about, that the step is done. */
    public Said done(UUID projectId, Work work) {
        return pen.write(projectId, work.entryId(), writing -> done(writing, work));
    }

    private Said read(Writing writing, Work work) {
        List<Refusal> refusals = mayBeWritten(writing, work.step());
        refusals.addAll(notValues(writing, work));
        if (!refusals.isEmpty()) {
            return Said.refused(refusals);
        }
        int stored = store(writing, work);
        return Said.stored(stored == 0 ? "" : title(writing, work) + ", " + readings(stored) + ".");
    }

    private Said done(Writing writing, Work work) {
        List<Refusal> refusals = mayBeWritten(writing, work.step());
        refusals.addAll(notValues(writing, work));
        Instant at = writing.at(work.at());
        if (writing.isToCome(at)) {
            refusals.add(new Refusal("at", writing.clock(at) + " is still to come. Write a time that has passed."));
        }
        if (!refusals.isEmpty()) {
            return Said.refused(refusals);
        }
        int stored = store(writing, work);
        List<Refusal> open = open(writing, work);
        if (!open.isEmpty()) {
            return new Said(open, stored == 0 ? "" : title(writing, work) + ", " + readings(stored) + ".");
        }
        writing.done(work.entryId(), work.step(), at);
        return Said.stored(title(writing, work) + " is done, " + writing.clock(at) + ".");
    }

    private static String title(Writing writing, Work work) {
        LogStep step = writing.state().step(work.step());
        return step.title().toLowerCase(java.util.Locale.ROOT) + " (" + step.words() + ")";
    }

    private static String readings(int count) {
        return count == 1 ? "one reading" : count + " readings";
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

    private static List<Refusal> notValues(Writing writing, Work work) {
        return writing.readings().of(work.step()).stream()
                .filter(asked -> work.typed().containsKey(asked.quantity()))
                .flatMap(asked -> asked
                        .refuse(work.typed().get(asked.quantity()))
                        .map(sentence -> new Refusal(asked.quantity(), sentence))
                        .stream())
                .toList();
    }

    /** A value that stands there already is not written again. */
    private static int store(Writing writing, Work work) {
        int stored = 0;
        for (Asked asked : writing.readings().of(work.step())) {
            String typed = work.typed().get(asked.quantity());
            if (typed == null) {
                continue;
            }
            String kept = asked.kept(typed);
            Optional<Effective> stands = writing.state().reading(work.step(), asked.quantity());
            if (stands.map(one -> !kept.equals(one.value())).orElse(true)) {
                writing.reading(Ids.next(), work.step(), asked.quantity(), kept, writing.now());
                stored++;
            } else if (work.stays().contains(asked.quantity())
                    && !writing.state().stays(stands.get().entry().id())) {
                writing.change(Ids.next(), stands.get().entry(), EntryKind.STAYS, null, null, writing.now());
            }
        }
        return stored;
    }

    /** What keeps the step from being done: not read, or outside its limits and not confirmed. */
    private static List<Refusal> open(Writing writing, Work work) {
        List<Refusal> open = new ArrayList<>();
        for (Asked asked : writing.readings().of(work.step())) {
            String typed = work.typed().get(asked.quantity());
            Optional<Effective> stands = writing.state().reading(work.step(), asked.quantity());
            Optional<String> value = typed != null
                    ? Optional.of(asked.kept(typed))
                    : stands.flatMap(one -> Optional.ofNullable(one.value()));
            if (value.isEmpty()) {
                if (asked.required()) {
                    open.add(new Refusal(asked.quantity(), asked.words() + ": not read yet."));
                }
            } else if (!isConfirmed(writing, work, asked, stands, value.get())) {
                asked.ask(value.get()).ifPresent(ask -> open.add(new Refusal(asked.quantity(), ask)));
            }
        }
        return open;
    }

    private static boolean isConfirmed(
            Writing writing, Work work, Asked asked, Optional<Effective> stands, String value) {
        boolean sameAsBefore = stands.isPresent() && value.equals(stands.get().value());
        return sameAsBefore
                && (work.stays().contains(asked.quantity())
                        || writing.state().stays(stands.get().entry().id()));
    }
}
