package org.plumbrow.cutover;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.outage.WindowQuestion;
import org.plumbrow.calc.outage.WindowSearch;
import org.plumbrow.crew.CrewFacts;
import org.plumbrow.crew.Crews;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.Option;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads what the outage page of a project shows. */
@Service
@Transactional(readOnly = true)
class OutageReading {

    private final ProjectAccess projectAccess;
    private final Access access;
    private final Projects projects;
    private final ProjectTitles titles;
    private final WindowFinder finder;
    private final Outages outages;
    private final OutageNotices notices;
    private final Crews crews;

    OutageReading(
            ProjectAccess projectAccess,
            Access access,
            Projects projects,
            ProjectTitles titles,
            WindowFinder finder,
            Outages outages,
            OutageNotices notices,
            Crews crews) {
        this.projectAccess = projectAccess;
        this.access = access;
        this.projects = projects;
        this.titles = titles;
        this.finder = finder;
        this.outages = outages;
        this.notices = notices;
        this.crews = crews;
    }

    OutageSheet sheet(UUID projectId) {
        projectAccess.require(projectId, May.SEE_CUTOVERS);
        ProjectFacts project = projects.facts(projectId);
        WindowFinder.Asking asking = finder.asking(project);
        List<OutageFacts> all = outages.ofProject(projectId);
        OutageFacts live = all.stream().filter(OutageFacts::isLive).findFirst().orElse(null);
        return new OutageSheet(
                titles.of(project),
                project,
                asking,
                asking.question().map(WindowSearch::answer).orElse(null),
                live,
                live == null ? "" : crewName(live),
                all.stream().filter(window -> !window.isLive()).toList(),
                access.may(project.branchId(), May.BOOK_OUTAGE),
                access.may(project.branchId(), May.RUN_CUTOVER));
    }

    private String crewName(OutageFacts window) {
        return Optional.ofNullable(window.crewId())
                .flatMap(crews::crew)
                .map(CrewFacts::name)
                .orElse("");
    }

    /** What the choice of a window needs: who may, the crews, the live window if there is one. */
    record Choosing(OutageSheet sheet, List<Option> crews) {}

    Choosing choosing(UUID projectId) {
        projectAccess.require(projectId, May.BOOK_OUTAGE);
        OutageSheet sheet = sheet(projectId);
        List<Option> offers = sheet.asking().question().map(WindowQuestion::crews).orElse(List.of()).stream()
                .map(crew -> new Option(crew.id(), crew.name()))
                .toList();
        return new Choosing(sheet, offers);
    }

    /** The letters that this choice would send. */
    OutageNotices.Drafts drafts(OutageSheet sheet, OutageChoice choice, String reason) {
        OutageFacts from = sheet.live() != null && sheet.live().state().isAnnounced() ? sheet.live() : null;
        return notices.drafts(sheet.project(), from, asFacts(sheet, choice), reason);
    }

    OutageNotices.Drafts cancellation(OutageSheet sheet, String reason) {
        return notices.drafts(sheet.project(), sheet.live(), null, reason);
    }

    private static OutageFacts asFacts(OutageSheet sheet, OutageChoice choice) {
        return OutageWindow.hold(
                        sheet.project().id(),
                        sheet.project().branchId(),
                        sheet.project().id(),
                        choice.plan(),
                        "",
                        java.time.Instant.EPOCH)
                .facts();
    }
}
