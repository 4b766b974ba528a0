package org.plumbrow.project.papers;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.evidence.Keeping;
import org.plumbrow.evidence.NewSignature;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Keeps what people bring for a project, with the journal line, and hides what should not be shown. */
@Service
@Transactional
public class ProjectPapers {

    private static final int MOST_LETTERS = 500;

    private final EvidenceStore evidence;
    private final ProjectAccess projects;
    private final Journal journal;
    private final Access access;
    private final Clock clock;

    ProjectPapers(EvidenceStore evidence, ProjectAccess projects, Journal journal, Access access, Clock clock) {
        this.evidence = evidence;
        this.projects = projects;
        this.journal = journal;
        this.access = access;
        this.clock = clock;
    }

    /** Keeps a file, or says why not. */
    public Keeping keep(UUID projectId, Upload upload) {
        UUID branchId = projects.require(projectId, May.WRITE_EVIDENCE);
        return written(projectId, evidence.keep(branchId, projectId, upload, access.actor()));
    }

    /** Keeps a signature, or says what is missing. */
    public Keeping sign(UUID projectId, NewSignature signature) {
        UUID branchId = projects.require(projectId, May.WRITE_EVIDENCE);
        return written(projectId, evidence.sign(branchId, projectId, signature, access.actor()));
    }

    private Keeping written(UUID projectId, Keeping keeping) {
        if (keeping instanceof Keeping.Kept kept) {
            line(projectId, "paper.added", "Kept: a " + kept.evidence().kind().words() + ".", kept.evidence());
        }
        return keeping;
    }

    /** Newest first; what is hidden only for who may show it again. */
    @Transactional(readOnly = true)
    public List<EvidenceFacts> of(UUID projectId) {
        UUID branchId = projects.require(projectId, May.SEE_PROJECTS);
        boolean seesHidden = access.may(branchId, May.EDIT_PROJECT);
        return evidence.ofProject(projectId).stream()
                .filter(paper -> seesHidden || !paper.hidden())
                .toList();
    }

    /** @throws NotFound if it is not a paper of this project that the person may see */
    @Transactional(readOnly = true)
    public EvidenceFacts one(UUID projectId, UUID paperId) {
        UUID branchId = projects.require(projectId, May.SEE_PROJECTS);
        return evidence.find(paperId)
                .filter(paper -> projectId.equals(paper.projectId()))
                .filter(paper -> !paper.hidden() || access.may(branchId, May.EDIT_PROJECT))
                .orElseThrow(() -> new NotFound("paper " + paperId));
    }

    /** Takes it from sight; it stays kept. @return why not, else empty */
    public Optional<Refusal> hide(UUID projectId, UUID paperId, String reason) {
        projects.require(projectId, May.EDIT_PROJECT);
        EvidenceFacts paper = one(projectId, paperId);
        if (reason.isBlank() || reason.length() > MOST_LETTERS) {
            return Optional.of(
                    new Refusal("reason", "Write the reason, at most 500 letters: it is kept with the paper."));
        }
        if (evidence.hide(paperId, reason.strip(), access.actor())) {
            line(projectId, "paper.hidden", "Hidden: a " + paper.kind().words() + ".", paper);
        }
        return Optional.empty();
    }

    /** Shows it again. @return false if it was not hidden */
    public boolean show(UUID projectId, UUID paperId) {
        projects.require(projectId, May.EDIT_PROJECT);
        EvidenceFacts paper = one(projectId, paperId);
        boolean shown = evidence.show(paperId);
        if (shown) {
            line(projectId, "paper.shown", "Shown again: a " + paper.kind().words() + ".", paper);
        }
        return shown;
    }

    private void line(UUID projectId, String kind, String sentence, EvidenceFacts paper) {
        Map<String, String> facts =
                Map.of("paper", paper.id().toString(), "kind", paper.kind().name());
        journal.append(JournalEvent.of(projectId, kind, sentence, facts), access.actor(), clock.instant());
    }
}
