package org.plumbrow.survey;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.project.Journal;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectChanged;
import org.plumbrow.survey.SurveySheet.StoredPart;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Writes the parts of a survey; each change with its journal line. */
@Service
@Transactional
public class SurveyBook {

    private final SurveyRows rows;
    private final ProjectAccess projectAccess;
    private final Access access;
    private final Journal journal;
    private final ApplicationEventPublisher events;

    SurveyBook(
            SurveyRows rows,
            ProjectAccess projectAccess,
            Access access,
            Journal journal,
            ApplicationEventPublisher events) {
        this.rows = rows;
        this.projectAccess = projectAccess;
        this.access = access;
        this.journal = journal;
        this.events = events;
    }

    /** What became of a sending. */
    sealed interface Said {
        /** @param open what is asked about in the part now */
        record Stored(long version, List<Asks.Ask> open) implements Said {}

        record Refused(List<Refusal> refusals) implements Said {}
    }

    static May act(SurveyPart part) {
        return part == SurveyPart.DAY_ONE ? May.WRITE_DAY_ONE : May.WRITE_SURVEY;
    }

    /**
     * Fills a part in which nothing was written, for whoever brings whole surveys.
     *
     * @param part the last word of its address: {@code service}
     * @throws IllegalArgumentException if a value is refused
     */
    public void fill(UUID projectId, String part, Map<String, String> typed) {
        Said said = save(projectId, SurveyPart.ofPath(part).orElseThrow(), 0, typed);
        if (said instanceof Said.Refused refused) {
            throw new IllegalArgumentException(refused.refusals.get(0).sentence());
        }
    }

    /**
     * @param version as it was opened, 0 for a part in which nothing was written
     * @throws EditedMeanwhile if somebody was faster and wrote something else
     */
    Said save(UUID projectId, SurveyPart part, long version, Map<String, String> typed) {
        UUID branchId = projectAccess.require(projectId, act(part));
        return save(branchId, projectId, part, version, typed);
    }

    /** How long the last change of a part may be taken back. */
    static final Duration UNDO_OFFERED = Duration.ofHours(24);

    boolean offersUndo(StoredPart stored) {
        return !stored.changedAt().isBefore(rows.now().minus(UNDO_OFFERED));
    }

    /**
     * Takes the last change of a part back, as a new change.
     *
     * @param version that is taken back
     * @return false if it is too long ago
     * @throws EditedMeanwhile if it is no longer the last
     */
    boolean undo(UUID projectId, SurveyPart part, long version) {
        UUID branchId = projectAccess.require(projectId, act(part));
        SurveySheet sheet = rows.of(projectId);
        EditedMeanwhile.check(version, sheet.version(part));
        Optional<StoredPart> last = sheet.stored(part).filter(this::offersUndo);
        if (last.isEmpty()) {
            return false;
        }
        StoredPart stored = last.get();
        PartReadings before = rows.before(projectId, part);
        if (!before.equals(stored.readings())) {
            write(branchId, projectId, part, version, stored.readings(), before);
        }
        return true;
    }

    private Said save(UUID branchId, UUID projectId, SurveyPart part, long version, Map<String, String> typed) {
        SurveySheet sheet = rows.of(projectId);
        PartReadings before = sheet.readings(part);
        PartTyping.Read read = PartTyping.read(part, typed, before);
        if (!read.refusals().isEmpty()) {
            return new Said.Refused(read.refusals());
        }
        if (read.readings().equals(before)) {
            return new Said.Stored(sheet.version(part), Asks.open(part, before, sheet.disconnectMostFt()));
        }
        EditedMeanwhile.check(version, sheet.version(part));
        write(branchId, projectId, part, version, before, read.readings());
        return new Said.Stored(version + 1, Asks.open(part, read.readings(), sheet.disconnectMostFt()));
    }

    private void write(
            UUID branchId, UUID projectId, SurveyPart part, long version, PartReadings before, PartReadings after) {
        StoredPart stored = new StoredPart(
                part, version + 1, after, rows.now(), access.actor().name());
        if (!rows.write(branchId, projectId, stored)) {
            throw new EditedMeanwhile(version, version + 1);
        }
        journal.append(PartWritten.of(projectId, part, before, after), access.actor(), stored.changedAt());
        events.publishEvent(new ProjectChanged(projectId, branchId));
    }
}
