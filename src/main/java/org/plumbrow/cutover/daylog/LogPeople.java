package org.plumbrow.cutover.daylog;

import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.daylog.LogPen.Said;
import org.plumbrow.cutover.daylog.PeopleOnSite.Person;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Who came and who left on the day, and what went well by luck only. */
@Service
class LogPeople {

    private static final int MOST_NAME = 120;
    private static final int MOST_ROLE = 80;
    private static final int MOST_TEXT = 1000;

    private final LogPen pen;
    private final LogDoor door;
    private final LogRows rows;

    LogPeople(LogPen pen, LogDoor door, LogRows rows) {
        this.pen = pen;
        this.door = door;
        this.rows = rows;
    }

    /** Beside the sheet of the log: who is there, and what nearly happened. */
    record Beside(List<Person> people, List<NearMiss> nearMisses) {}

    /** Of the newest log; nothing before one is open. */
    @Transactional(readOnly = true)
    public Beside beside(UUID projectId) {
        door.require(projectId);
        return rows.latest(projectId)
                .map(log -> {
                    LogState state = new LogState(rows.steps(log.id()), rows.entries(log.id()));
                    return new Beside(PeopleOnSite.of(log, state).all(), NearMiss.of(state));
                })
                .orElse(new Beside(List.of(), List.of()));
    }

    /** @param at when they came, if not now */
    record Arrival(
            UUID entryId,
            String name,
            String role,
            @Nullable LocalTime at) {}

    Said arrives(UUID projectId, Arrival arrival) {
        return pen.write(projectId, arrival.entryId(), writing -> {
            String name = arrival.name().strip();
            String role = arrival.role().strip();
            List<Refusal> refusals = new ArrayList<>(closed(writing));
            if (name.length() < 2 || name.length() > MOST_NAME) {
                refusals.add(new Refusal("name", "Write the name, 2 to 120 characters."));
            } else if (PeopleOnSite.of(writing.log(), writing.state()).isThere(name)) {
                refusals.add(new Refusal("name", name + " is on the list already."));
            }
            if (role.length() < 2 || role.length() > MOST_ROLE) {
                refusals.add(
                        new Refusal("role", "Write what they are here, 2 to 80 characters: utility’s technician."));
            }
            writing.against(arrival.at()).ifPresent(refusals::add);
            if (!refusals.isEmpty()) {
                return Said.refused(refusals);
            }
            Instant at = writing.at(arrival.at());
            writing.about(arrival.entryId(), step(writing), EntryKind.ARRIVED, name, role, at);
            return Said.stored(name + ", " + role + ", is on site since " + writing.clock(at) + ".");
        });
    }

    Said leaves(UUID projectId, UUID entryId, UUID arrival, @Nullable LocalTime at) {
        return pen.write(projectId, entryId, writing -> {
            Optional<Person> person =
                    PeopleOnSite.of(writing.log(), writing.state()).there(arrival);
            if (person.isEmpty()) {
                return Said.meanwhile("", "They are no longer on the list of who is there.");
            }
            List<Refusal> refusals = new ArrayList<>(closed(writing));
            writing.against(at).map(no -> Refusal.ofForm(no.sentence())).ifPresent(refusals::add);
            Instant left = writing.at(at);
            if (refusals.isEmpty() && left.isBefore(person.get().from())) {
                refusals.add(Refusal.ofForm(person.get().name() + " came at "
                        + writing.clock(person.get().from()) + ", after that."));
            }
            if (!refusals.isEmpty()) {
                return Said.refused(refusals);
            }
            LogEntry arrived = writing.state().entry(arrival).orElseThrow();
            writing.change(entryId, arrived, EntryKind.LEFT, person.get().name(), null, left);
            return Said.stored(person.get().name() + " left at " + writing.clock(left) + ".");
        });
    }

    /** @param couldHave what could have happened; @param done what was done about it */
    record Told(UUID entryId, String happened, String couldHave, String done) {}

    Said nearMiss(UUID projectId, Told told) {
        return pen.write(projectId, told.entryId(), writing -> {
            List<Refusal> refusals = new ArrayList<>(closed(writing));
            text("happened", told.happened(), "Write what happened, 1 to 1,000 characters.")
                    .ifPresent(refusals::add);
            text("couldHave", told.couldHave(), "Write what could have happened, 1 to 1,000 characters.")
                    .ifPresent(refusals::add);
            text("done", told.done(), "Write what was done about it, 1 to 1,000 characters.")
                    .ifPresent(refusals::add);
            if (!refusals.isEmpty()) {
                return Said.refused(refusals);
            }
            writing.about(
                    told.entryId(),
                    step(writing),
                    EntryKind.NEAR_MISS,
                    told.happened().strip(),
                    null,
                    writing.now());
            LogEntry miss = writing.added().get(writing.added().size() - 1);
            writing.change(
                    Ids.next(), miss, EntryKind.COULD_HAVE, told.couldHave().strip(), null, writing.now());
            writing.change(Ids.next(), miss, EntryKind.WAS_DONE, told.done().strip(), null, writing.now());
            return Said.stored("near miss. " + told.happened().strip());
        });
    }

    private static Optional<Refusal> text(String field, String typed, String sentence) {
        return typed.isBlank() || typed.strip().length() > MOST_TEXT
                ? Optional.of(new Refusal(field, sentence))
                : Optional.empty();
    }

    private static List<Refusal> closed(Writing writing) {
        return writing.log().isClosed() ? List.of(Refusal.ofForm("This log is closed.")) : List.of();
    }

    private static String step(Writing writing) {
        return writing.state().current().map(LogStep::code).orElse(Procedure.LAST);
    }
}
