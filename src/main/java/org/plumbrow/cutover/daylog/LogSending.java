package org.plumbrow.cutover.daylog;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.plumbrow.project.PhoneReply;
import org.plumbrow.project.PhoneSending;
import org.plumbrow.project.PhoneSendings;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Takes what a phone has kept of a day log. Each tap counts once, also when the answer to it was lost. */
@Service
@Transactional
class LogSending {

    private final PhoneSendings sendings;
    private final LogDoor door;
    private final PhoneTaps taps;

    LogSending(PhoneSendings sendings, LogDoor door, PhoneTaps taps) {
        this.sendings = sendings;
        this.door = door;
        this.taps = taps;
    }

    /**
     * Stores it unless it came before.
     *
     * @param what last words of the form's address: "steps/7/done"
     * @param version what the page had seen of what it replaces; one more stands once it is stored
     * @param store does it and says what is against it
     * @param again what is still to be done of it where it came before
     */
    PhoneReply take(
            Optional<PhoneSending> sending,
            UUID projectId,
            String what,
            long version,
            PhoneTap tap,
            Supplier<List<Refusal>> store,
            Supplier<List<Refusal>> again) {
        UUID branchId = door.require(projectId).branchId();
        Optional<PhoneReply> known = sendings.known(sending, projectId);
        if (known.isPresent()) {
            List<Refusal> more = known.get().wasTaken() ? taps.during(tap, again) : List.of();
            return more.isEmpty() ? known.get() : PhoneReply.refused(more);
        }
        List<Refusal> against = taps.during(tap, store);
        if (!against.isEmpty()) {
            return PhoneReply.refused(against);
        }
        sendings.took(sending.orElseThrow(), branchId, projectId, what, version + 1);
        return PhoneReply.stored(version + 1, 0);
    }
}
