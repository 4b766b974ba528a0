package org.plumbrow.permit;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.calc.leadtime.LearnedLeadTime;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectTitle;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What the pages of waits show. */
@Service
@Transactional(readOnly = true)
class OwedReading {

    private final AwaitedRows rows;
    private final AwaitedBook book;
    private final BranchSettings settings;
    private final Projects projects;
    private final ProjectTitles titles;
    private final ProjectAccess projectAccess;
    private final Access access;

    OwedReading(
            AwaitedRows rows,
            AwaitedBook book,
            BranchSettings settings,
            Projects projects,
            ProjectTitles titles,
            ProjectAccess projectAccess,
            Access access) {
        this.rows = rows;
        this.book = book;
        this.settings = settings;
        this.projects = projects;
        this.titles = titles;
        this.projectAccess = projectAccess;
        this.access = access;
    }

    record OfProject(ProjectTitle title, List<OwedLine> lines) {
        public long overdue() {
            return lines.stream().filter(OwedLine::overdue).count();
        }
    }

    /** @param byWho who owes something, each with what it owes, overdue first */
    record OfBranch(int open, long overdue, Map<String, List<OwedLine>> byWho, List<LeadTimes.Named> learned) {}

    OfProject project(UUID projectId) {
        UUID branchId = projectAccess.require(projectId, May.SEE_JOURNAL);
        ProjectTitle title = titles.of(projects.facts(projectId));
        Known known = known(branchId);
        List<Awaited> all = rows.ofProject(projectId);
        return new OfProject(
                title,
                all.stream()
                        .map(one -> line(one, title.number(), title.name(), all, known))
                        .toList());
    }

    /** @throws org.plumbrow.web.NotFound if it is not one of this project */
    OwedLine one(UUID projectId, UUID awaitedId) {
        UUID branchId = projectAccess.require(projectId, May.EDIT_PROJECT);
        return line(book.one(projectId, awaitedId), "", "", rows.ofProject(projectId), known(branchId));
    }

    OfBranch branch() {
        UUID branchId = access.require(May.SEE_LOOK_AHEAD).id();
        Known known = known(branchId);
        List<OwedLine> lines = rows.open(branchId).stream()
                .map(one -> line(one.awaited(), one.number(), one.name(), List.of(), known))
                .sorted(Comparator.comparingLong((OwedLine line) -> line.overdue() ? -line.daysLate() : 1))
                .toList();
        Map<String, List<OwedLine>> byWho = lines.stream()
                .collect(Collectors.groupingBy(
                        line -> line.awaited().who(), java.util.LinkedHashMap::new, Collectors.toList()));
        return new OfBranch(
                lines.size(),
                lines.stream().filter(OwedLine::overdue).count(),
                byWho,
                sorted(known.times().learned()));
    }

    private static List<LeadTimes.Named> sorted(List<LeadTimes.Named> learned) {
        return learned.stream()
                .sorted(Comparator.comparing(LeadTimes.Named::who)
                        .thenComparing(one -> one.time().table().words()))
                .toList();
    }

    /** What lines are made with. */
    private record Known(LeadTimes times, LocalDate today) {}

    private Known known(UUID branchId) {
        return new Known(new LeadTimes(settings.forPlanning(branchId), rows.came(branchId)), book.today(branchId));
    }

    private OwedLine line(Awaited one, String number, String name, List<Awaited> ofProject, Known known) {
        LearnedLeadTime time = known.times().of(one);
        return new OwedLine(
                one,
                number,
                name,
                ofProject.stream().anyMatch(one::isAskedAgainBy),
                time,
                known.times().after(one, time.evenDays()),
                known.times().after(one, time.eightyDays()),
                known.today());
    }
}
