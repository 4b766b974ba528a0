package org.plumbrow.status.desk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.Outages;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.evidence.EvidenceKind;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.notice.NoticeKind;
import org.plumbrow.notice.NoticeLine;
import org.plumbrow.notice.Outbox;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitle;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.status.CustomerAnswers;
import org.plumbrow.status.CustomerLinks;
import org.plumbrow.status.CustomerSharing;
import org.plumbrow.status.CustomerVisits;
import org.plumbrow.status.DutyPhones;
import org.plumbrow.status.SharedPaper;
import org.plumbrow.status.page.CustomerPage;
import org.plumbrow.status.page.CustomerView;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads what the branch's pages about the customer show; each asks first who may share with customers. */
@Service
@Transactional(readOnly = true)
class DeskReading {

    private final ProjectAccess access;
    private final Projects projects;
    private final ProjectTitles titles;
    private final CustomerLinks links;
    private final CustomerSharing sharing;
    private final CustomerAnswers answers;
    private final CustomerVisits visits;
    private final DutyPhones phones;
    private final EvidenceStore evidence;
    private final Outages outages;
    private final Outbox outbox;
    private final CustomerPage page;

    DeskReading(
            ProjectAccess access,
            Projects projects,
            ProjectTitles titles,
            CustomerLinks links,
            CustomerSharing sharing,
            CustomerAnswers answers,
            CustomerVisits visits,
            DutyPhones phones,
            EvidenceStore evidence,
            Outages outages,
            Outbox outbox,
            CustomerPage page) {
        this.access = access;
        this.projects = projects;
        this.titles = titles;
        this.links = links;
        this.sharing = sharing;
        this.answers = answers;
        this.visits = visits;
        this.phones = phones;
        this.evidence = evidence;
        this.outages = outages;
        this.outbox = outbox;
        this.page = page;
    }

    /** The title block, for the pages below. */
    ProjectTitle title(UUID projectId) {
        access.require(projectId, May.SHARE_WITH_CUSTOMER);
        return titles.of(projectId);
    }

    DeskSheet sheet(UUID projectId) {
        access.require(projectId, May.SHARE_WITH_CUSTOMER);
        ProjectFacts project = projects.facts(projectId);
        CustomerSharing.Written words = sharing.terms(projectId);
        List<SharedPaper> shared = sharing.papers(projectId);
        Map<UUID, EvidenceFacts> files = files(shared, words);
        return new DeskSheet(
                titles.of(project),
                links.of(projectId),
                words,
                Optional.ofNullable(words.terms().shutOffPhotoId()).map(files::get),
                shared.stream()
                        .map(paper -> new DeskSheet.Shared(paper, files.get(paper.evidenceId())))
                        .toList(),
                phones.of(project),
                answers.of(projectId),
                outages.live(projectId)
                        .filter(window -> window.state().isAnnounced())
                        .map(OutageFacts::day),
                visits.of(projectId),
                written(projectId));
    }

    private Map<UUID, EvidenceFacts> files(List<SharedPaper> shared, CustomerSharing.Written words) {
        Set<UUID> ids = new HashSet<>();
        shared.forEach(paper -> ids.add(paper.evidenceId()));
        if (words.terms().shutOffPhotoId() != null) {
            ids.add(words.terms().shutOffPhotoId());
        }
        return ids.isEmpty()
                ? Map.of()
                : evidence.of(ids).stream().collect(Collectors.toMap(EvidenceFacts::id, Function.identity()));
    }

    private List<NoticeLine> written(UUID projectId) {
        return outbox.ofProject(projectId).stream()
                .filter(line -> line.kind() == NoticeKind.CUSTOMER)
                .toList();
    }

    CustomerSharing.Written words(UUID projectId) {
        access.require(projectId, May.SHARE_WITH_CUSTOMER);
        return sharing.terms(projectId);
    }

    /** A file that could be shared, and the title under which it is; empty as long as it is not. */
    record Sharable(EvidenceFacts evidence, String title) {}

    /** Files of the project that can be shown to a customer, newest first. */
    List<Sharable> sharable(UUID projectId) {
        access.require(projectId, May.SHARE_WITH_CUSTOMER);
        Map<UUID, String> shared = sharing.papers(projectId).stream()
                .collect(Collectors.toMap(SharedPaper::evidenceId, SharedPaper::title));
        List<Sharable> all = new ArrayList<>();
        for (EvidenceFacts paper : evidence.ofProject(projectId)) {
            if (paper.hasFile() && !paper.hidden() && paper.kind() != EvidenceKind.SIGNATURE) {
                all.add(new Sharable(paper, shared.getOrDefault(paper.id(), "")));
            }
        }
        return all;
    }

    /** @throws NotFound if it is none that can be shared */
    Sharable sharable(UUID projectId, UUID evidenceId) {
        return sharable(projectId).stream()
                .filter(one -> one.evidence().id().equals(evidenceId))
                .findFirst()
                .orElseThrow(() -> new NotFound("paper " + evidenceId));
    }

    /** Photos that could show the shut-off. */
    List<EvidenceFacts> photos(UUID projectId) {
        return sharable(projectId).stream()
                .map(Sharable::evidence)
                .filter(EvidenceFacts::isPicture)
                .toList();
    }

    CustomerView preview(UUID projectId) {
        access.require(projectId, May.SHARE_WITH_CUSTOMER);
        return page.of(projectId);
    }

    /** What the customer opens under this number. @throws NotFound if nothing */
    UUID shown(UUID projectId, String slot) {
        access.require(projectId, May.SHARE_WITH_CUSTOMER);
        return sharing.papers(projectId).stream()
                .filter(paper -> Integer.toString(paper.slot()).equals(slot))
                .map(SharedPaper::evidenceId)
                .findFirst()
                .orElseThrow(NotFound::new);
    }

    ProjectFacts project(UUID projectId) {
        access.require(projectId, May.SHARE_WITH_CUSTOMER);
        return projects.facts(projectId);
    }

    DutyPhones.Reached phone(ProjectFacts project, org.plumbrow.project.Duty duty) {
        return phones.of(project).stream()
                .filter(who -> who.duty() == duty)
                .findFirst()
                .orElseThrow(NotFound::new);
    }
}
