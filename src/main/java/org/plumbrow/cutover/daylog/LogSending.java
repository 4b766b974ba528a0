package org.plumbrow.cutover.daylog;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.plumbrow.project.PhoneSending;
import org.plumbrow.project.PhoneSendings;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Takes what a phone has kept of a day log. Each tap counts once, also when the answer to it was lost. */
@Service
@Transactional
class LogSending {

    private final PhoneSendings sendings;
    private final ProjectAccess projectAccess;
    private final PhoneTaps taps;

    LogSending(PhoneSendings sendings, ProjectAccess projectAccess, PhoneTaps taps) {
        this.sendings = sendings;
        this.projectAccess = projectAccess;
        this.taps = taps;
    }

    /**
     * The answer to one sending.
     *
     * @param said stored, already, refused or not-theirs; only after the first two may the phone forget it
     * @param next address of the page to go on with; empty for none
     */
    record Answer(String said, long version, String next, List<Refusal> problems) {
        static Answer refused(List<Refusal> problems) {
            return new Answer("refused", 0, "", problems);
        }

        static Answer of(String said, UUID projectId) {
            return new Answer(said, 0, "/projects/" + projectId + "/day-log", List.of());
        }
    }

    /**
     * Stores it unless it came before.
     *
     * @param what last words of the form's address: "steps/7/done"
     * @param store does it and says what is against it
     */
    Answer take(
            Optional<PhoneSending> sending, UUID projectId, String what, PhoneTap tap, Supplier<List<Refusal>> store) {
        UUID branchId = projectAccess.require(projectId, May.RUN_CUTOVER);
        if (sending.isEmpty()) {
            return Answer.refused(List.of(
                    Refusal.ofForm("This came without its number, so it cannot be told from another. Tap it again.")));
        }
        if (!sendings.isTheirs(sending.get())) {
            return new Answer("not-theirs", 0, "", List.of());
        }
        if (sendings.before(sending.get(), projectId).isPresent()) {
            return Answer.of("already", projectId);
        }
        List<Refusal> against = taps.during(tap, store);
        if (!against.isEmpty()) {
            return Answer.refused(against);
        }
        sendings.took(sending.get(), branchId, projectId, what, 0);
        return Answer.of("stored", projectId);
    }
}
