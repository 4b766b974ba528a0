package org.plumbrow.cutover.daylog;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.plumbrow.cutover.daylog.LogState.Effective;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Refusal;

/** The readings of one step as they come in, beside what stands there. */
final class StepReadings {

    private static final int MOST_REASON = 300;

    private final Writing writing;
    private final LogSteps.Work work;
    private final PutRight putRight;

    StepReadings(Writing writing, LogSteps.Work work) {
        this.writing = writing;
        this.work = work.without(replaced(writing, work));
        this.putRight = new PutRight(writing, work);
    }

    /** Sent again as the page showed it, though somebody has read it anew since: theirs stays. */
    private static Map<String, String> replaced(Writing writing, LogSteps.Work work) {
        Map<String, String> replaced = new HashMap<>();
        work.typed().forEach((quantity, typed) -> {
            String seen = work.seen().getOrDefault(quantity, "");
            String now = writing.state().value(work.step(), quantity).orElse("");
            if (!seen.isEmpty() && !seen.equals(now) && seen.equals(typed.strip())) {
                replaced.put(quantity, now);
            }
        });
        return replaced;
    }

    List<Refusal> notValues() {
        return asked().flatMap(asked ->
                        typed(asked)
                                .flatMap(asked::refuse)
                                .map(sentence -> new Refusal(asked.quantity(), sentence))
                                .stream())
                .toList();
    }

    /** Read by somebody else since the page was opened, and not the same. */
    List<Refusal> twice() {
        return asked().flatMap(asked -> twice(asked).stream()).toList();
    }

    private Optional<Refusal> twice(Asked asked) {
        if (!work.seen().containsKey(asked.quantity())) {
            return Optional.empty();
        }
        String seen = work.seen().get(asked.quantity());
        return typed(asked)
                .map(asked::kept)
                .flatMap(mine -> stands(asked)
                        .filter(theirs -> !putRight.isOwn(theirs.entry(), asked))
                        .filter(theirs -> !mine.equals(theirs.value()) && !seen.equals(theirs.value()))
                        .map(theirs -> new Refusal(asked.quantity(), twice(asked, theirs, mine))));
    }

    private String twice(Asked asked, Effective theirs, String mine) {
        return "%s: %s wrote %s at %s, you %s. Both are kept. Read it again and send what is right."
                .formatted(
                        asked.words(),
                        theirs.entry().byName(),
                        asked.shown(String.valueOf(theirs.value())),
                        writing.clock(theirs.entry().storedAt()),
                        asked.shown(mine));
    }

    /**
     * A value that stands there already is not written again.
     *
     * @return what was stored, in words
     */
    List<String> store() {
        List<String> explained = new ArrayList<>(storePutRight());
        int read = 0;
        for (Asked asked : asked().toList()) {
            Optional<String> kept = typed(asked).map(asked::kept);
            Optional<Effective> stands = stands(asked);
            if (putRight.is(asked) && kept.isPresent()) {
                read++;
            } else if (kept.isPresent() && !kept.equals(stands.map(Effective::value))) {
                writing.reading(
                        putRight.freeId(asked), work.step(), asked.quantity(), kept.get(), writing.at(work.at()));
                read++;
            } else if (stands.filter(one -> mayStay(asked, one)).isPresent()) {
                explained.add(explain(asked, stands.get()));
            }
        }
        if (read > 0) {
            explained.add(0, read == 1 ? "one reading" : read + " readings");
        }
        return explained;
    }

    /** Only what was put right on the phone; all else of the tap is in the log already. */
    List<String> storePutRight() {
        return asked().filter(putRight::is)
                .flatMap(asked ->
                        typed(asked).flatMap(typed -> putRight.store(asked, typed, writing.at(work.at()))).stream())
                .toList();
    }

    private boolean mayStay(Asked asked, Effective stands) {
        return isExplained(asked) && !staysAlready(stands) && !asked.isShutAt(String.valueOf(stands.value()));
    }

    private String explain(Asked asked, Effective stands) {
        String why = work.stays().get(asked.quantity()).strip();
        writing.change(Ids.next(), stands.entry(), EntryKind.STAYS, null, why, writing.now());
        return asked.words() + " stays at " + asked.shown(String.valueOf(stands.value())) + ", " + why;
    }

    /** What keeps the step from being done: not read, or outside its limits and not explained. */
    List<Refusal> open() {
        return asked().flatMap(asked -> open(asked).stream()).toList();
    }

    private Optional<Refusal> open(Asked asked) {
        Optional<Effective> stands = stands(asked);
        Optional<String> standing = stands.map(Effective::value);
        Optional<String> value = typed(asked).map(asked::kept).or(() -> standing);
        if (value.isEmpty()) {
            return asked.required()
                    ? Optional.of(new Refusal(asked.quantity(), asked.words() + ": not read yet."))
                    : Optional.empty();
        }
        boolean readTwice = value.equals(standing) && !asked.isShutAt(value.get());
        return readTwice
                        && (isExplained(asked)
                                || stands.filter(this::staysAlready).isPresent())
                ? Optional.empty()
                : asked.ask(value.get()).map(ask -> new Refusal(asked.quantity(), ask));
    }

    private boolean isExplained(Asked asked) {
        String why = work.stays().getOrDefault(asked.quantity(), "");
        return !why.isBlank() && why.strip().length() <= MOST_REASON;
    }

    private boolean staysAlready(Effective reading) {
        return writing.state().stays(reading.entry().id());
    }

    private Stream<Asked> asked() {
        return writing.readings().of(work.step()).stream();
    }

    private Optional<String> typed(Asked asked) {
        return Optional.ofNullable(work.typed().get(asked.quantity()));
    }

    private Optional<Effective> stands(Asked asked) {
        return writing.state().reading(work.step(), asked.quantity());
    }
}
