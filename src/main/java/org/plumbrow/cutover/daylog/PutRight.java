package org.plumbrow.cutover.daylog;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.database.Ids;

/**
 * Readings of one tap that were put right on the phone before it was sent: the first stands, each correction beside it. The
 * ids follow from those that the phone gave, so that a tap that comes twice, the second time put right, leaves one of each.
 */
final class PutRight {

    private final Writing writing;
    private final LogSteps.Work work;

    PutRight(Writing writing, LogSteps.Work work) {
        this.writing = writing;
        this.work = work;
    }

    boolean is(Asked asked) {
        return !writing.fixesOf(asked.quantity()).isEmpty();
    }

    /** Whether this entry is a reading of this very tap. */
    boolean isOwn(LogEntry entry, Asked asked) {
        return entry.id().equals(readingId(asked));
    }

    /** Of a reading that is to be stored now. */
    UUID freeId(Asked asked) {
        UUID id = readingId(asked);
        return writing.isFromPhone() && writing.state().entry(id).isEmpty() ? id : Ids.next();
    }

    private UUID readingId(Asked asked) {
        return of(work.entryId() + "/" + asked.quantity());
    }

    private static UUID of(String name) {
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
    }

    /** @return what was put right, in words; empty when all of it stands already */
    Optional<String> store(Asked asked, String last, Instant at) {
        List<PhoneTap.Fix> fixes = writing.fixesOf(asked.quantity());
        List<String> said = new ArrayList<>();
        Optional<LogEntry> reading = writing.state().entry(readingId(asked));
        Optional<String> before = Optional.empty();
        for (int i = 0; i <= fixes.size(); i++) {
            Optional<String> value =
                    readable(asked, i < fixes.size() ? fixes.get(i).was() : last);
            if (value.isEmpty() || value.equals(before)) {
                continue;
            }
            if (reading.isEmpty()) {
                reading = Optional.of(first(asked, value.get(), at));
            } else if (before.isPresent() && fix(reading.get(), fixes.get(i - 1), value.get())) {
                said.add(asked.shown(before.get()) + " is corrected to " + asked.shown(value.get()));
            }
            before = value;
        }
        return said.isEmpty() ? Optional.empty() : Optional.of(asked.words() + ": " + String.join(", ", said));
    }

    /** What cannot be a reading at all is no entry; it was never more than typed. */
    private static Optional<String> readable(Asked asked, String typed) {
        return asked.refuse(typed).isEmpty() ? Optional.of(asked.kept(typed)) : Optional.empty();
    }

    private LogEntry first(Asked asked, String value, Instant at) {
        return writing.reading(readingId(asked), work.step(), asked.quantity(), value, at);
    }

    private boolean fix(LogEntry reading, PhoneTap.Fix fix, String value) {
        UUID id = of(work.entryId() + "/" + fix.id() + "/" + fix.quantity());
        if (writing.state().entry(id).isPresent()) {
            return false;
        }
        writing.putRight(id, reading, fix, value);
        return true;
    }
}
