package org.plumbrow.status;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.evidence.EvidenceKind;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What a project's customer is shown beside the dates; each change with its journal line, which quotes nothing. */
@Service
@Transactional
public class CustomerSharing {

    private static final int TITLE_MOST = 80;

    private final SharingRows rows;
    private final EvidenceStore evidence;
    private final ProjectAccess projects;
    private final Journal journal;
    private final Access access;
    private final Clock clock;

    CustomerSharing(
            SharingRows rows,
            EvidenceStore evidence,
            ProjectAccess projects,
            Journal journal,
            Access access,
            Clock clock) {
        this.rows = rows;
        this.evidence = evidence;
        this.projects = projects;
        this.journal = journal;
        this.access = access;
        this.clock = clock;
    }

    /** @param version 0 as long as nothing was ever written */
    public record Written(long version, CustomerTerms terms) {}

    /** Whoever calls has asked who may see it; the branch wall holds. */
    @Transactional(readOnly = true)
    public Written terms(UUID projectId) {
        return rows.terms(projectId);
    }

    /** What the customer may open, in the order in which it was shared; hidden papers are left out by whoever shows them. */
    @Transactional(readOnly = true)
    public List<SharedPaper> papers(UUID projectId) {
        return rows.papers(projectId);
    }

    /** @throws EditedMeanwhile if somebody changed it since @return what is wrong, else it is changed */
    public Optional<Refusal> change(UUID projectId, long openedVersion, CustomerTerms to) {
        UUID branchId = projects.require(projectId, May.SHARE_WITH_CUSTOMER);
        Written now = rows.terms(projectId);
        EditedMeanwhile.check(openedVersion, now.version());
        Optional<Refusal> refusal = against(projectId, to);
        if (refusal.isPresent() || to.equals(now.terms())) {
            return refusal;
        }
        if (!rows.write(projectId, branchId, now.version(), to, access.actor().name(), clock.instant())) {
            throw new EditedMeanwhile(openedVersion, openedVersion + 1);
        }
        line(projectId, "status.words", "Customer's page changed: " + changed(now.terms(), to) + ".", Map.of());
        return Optional.empty();
    }

    private Optional<Refusal> against(UUID projectId, CustomerTerms to) {
        if (to.shutOffPlace().length() > CustomerTerms.PLACE_MOST) {
            return tooLong("shutOffPlace", CustomerTerms.PLACE_MOST, to.shutOffPlace());
        }
        if (to.message().length() > CustomerTerms.MESSAGE_MOST) {
            return tooLong("message", CustomerTerms.MESSAGE_MOST, to.message());
        }
        if (to.shutOffPhotoId() != null && to.shutOffPlace().isEmpty()) {
            return Optional.of(new Refusal(
                    "shutOffPlace", "Write where it is, too: not everybody sees a photo, and paper prints it gray."));
        }
        boolean photo = to.shutOffPhotoId() == null
                || paper(projectId, to.shutOffPhotoId())
                        .filter(EvidenceFacts::isPicture)
                        .isPresent();
        return photo
                ? Optional.empty()
                : Optional.of(new Refusal("shutOffPhoto", "Choose one of this project's photos, or none."));
    }

    private static Optional<Refusal> tooLong(String field, int most, String text) {
        return Optional.of(new Refusal(field, most + " characters fit; " + text.length() + " are written."));
    }

    private static String changed(CustomerTerms from, CustomerTerms to) {
        List<String> parts = new ArrayList<>();
        if (!from.shutOffPlace().equals(to.shutOffPlace())) {
            parts.add("where the shut-off is");
        }
        if (!java.util.Objects.equals(from.shutOffPhotoId(), to.shutOffPhotoId())) {
            parts.add("its photo");
        }
        if (!from.message().equals(to.message())) {
            parts.add(to.message().isEmpty() ? "message taken away" : "message");
        }
        return String.join(", ", parts);
    }

    /** Lets the customer open a paper of the project. @return what is wrong, else it is shared */
    public Optional<Refusal> share(UUID projectId, UUID evidenceId, String title) {
        UUID branchId = projects.require(projectId, May.SHARE_WITH_CUSTOMER);
        EvidenceFacts paper = paper(projectId, evidenceId).orElseThrow(() -> new NotFound("paper " + evidenceId));
        String written = title.strip();
        if (written.isEmpty() || written.length() > TITLE_MOST) {
            return Optional.of(new Refusal(
                    "title", "Write what the customer reads as its name, 1 to " + TITLE_MOST + " characters."));
        }
        journal.inTurn(projectId);
        rows.share(projectId, branchId, evidenceId, written, access.actor().name(), clock.instant());
        line(
                projectId,
                "status.shared",
                "Shared with the customer: a " + paper.kind().words() + ".",
                of(paper));
        return Optional.empty();
    }

    /** The customer can no longer open it. @return false if they could not before */
    public boolean stopSharing(UUID projectId, UUID evidenceId) {
        projects.require(projectId, May.SHARE_WITH_CUSTOMER);
        return turned(projectId, evidenceId, rows.stop(projectId, evidenceId, clock.instant()), "status.unshared");
    }

    /** Shares it again under its old title: the opposite of {@link #stopSharing}. */
    public boolean shareAgain(UUID projectId, UUID evidenceId) {
        projects.require(projectId, May.SHARE_WITH_CUSTOMER);
        return turned(projectId, evidenceId, rows.again(projectId, evidenceId), "status.shared");
    }

    private boolean turned(UUID projectId, UUID evidenceId, boolean changed, String kind) {
        if (changed) {
            EvidenceFacts paper = evidence.find(evidenceId).orElseThrow(NotFound::new);
            String what = kind.equals("status.shared") ? "Shared with the customer again" : "No longer shared";
            line(projectId, kind, what + ": a " + paper.kind().words() + ".", of(paper));
        }
        return changed;
    }

    /** A file of this project that can be shown: signatures are for the branch's own eyes. */
    private Optional<EvidenceFacts> paper(UUID projectId, UUID evidenceId) {
        return evidence.find(evidenceId)
                .filter(paper -> projectId.equals(paper.projectId()))
                .filter(paper -> paper.hasFile() && !paper.hidden() && paper.kind() != EvidenceKind.SIGNATURE);
    }

    private static Map<String, String> of(EvidenceFacts paper) {
        return Map.of("paper", paper.id().toString());
    }

    private void line(UUID projectId, String kind, String sentence, Map<String, String> facts) {
        journal.append(JournalEvent.of(projectId, kind, sentence, facts), access.actor(), clock.instant());
    }
}
