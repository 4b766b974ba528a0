package org.plumbrow.estimate.site;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.finance.SelfUse;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.estimate.site.EstimateSource.Gathered;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitle;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads what the pages of use and size show. */
@Service
@Transactional(readOnly = true)
class UseReadingDesk {

    private final Projects projects;
    private final ProjectAccess access;
    private final ProjectTitles titles;
    private final UseMeters meters;
    private final UseYears years;
    private final EstimateSource source;
    private final YieldBook book;
    private final SizeLimits limits;

    UseReadingDesk(
            Projects projects,
            ProjectAccess access,
            ProjectTitles titles,
            UseMeters meters,
            UseYears years,
            EstimateSource source,
            YieldBook book,
            SizeLimits limits) {
        this.projects = projects;
        this.access = access;
        this.titles = titles;
        this.meters = meters;
        this.years = years;
        this.source = source;
        this.book = book;
        this.limits = limits;
    }

    /** @param estimate null without a yield */
    record Page(ProjectTitle title, UseView view, @Nullable EstimateFacts estimate) {}

    Page page(UUID projectId) {
        access.require(projectId, May.SEE_ESTIMATE);
        ProjectFacts project = projects.facts(projectId);
        Gathered gathered = source.of(project);
        Optional<EstimateFacts> estimate = book.facts(gathered);
        UseYears.SiteUse use = years.of(projectId).orElse(null);
        SelfUse self = use == null || estimate.isEmpty() ? null : book.selfUse(gathered, use, estimate.get());
        return new Page(titles.of(project), UseView.of(meters.ofProject(projectId), use, self), estimate.orElse(null));
    }

    record Sheet(ProjectTitle title, ProjectFacts project) {}

    Sheet sheet(UUID projectId, May act) {
        access.require(projectId, act);
        ProjectFacts project = projects.facts(projectId);
        return new Sheet(titles.of(project), project);
    }

    /** @param missing in sentences; then there is nothing to size */
    record SizeBasis(
            ProjectTitle title,
            ProjectFacts project,
            @Nullable Double useKwh,
            @Nullable EstimateFacts estimate,
            List<SizeLimits.Limit> limits,
            List<String> missing) {}

    SizeBasis size(UUID projectId) {
        access.require(projectId, May.SEE_ESTIMATE);
        ProjectFacts project = projects.facts(projectId);
        Gathered gathered = source.of(project);
        Optional<EstimateFacts> estimate = book.facts(gathered);
        Double use = years.of(projectId).map(UseYears.SiteUse::kwhOfYear).orElse(null);
        List<String> missing = new java.util.ArrayList<>();
        if (use == null) {
            missing.add("Use of twelve months is not known. Type it from the bills, or bring the utility’s file.");
        }
        if (estimate.isEmpty()) {
            missing.addAll(gathered.missing());
        }
        return new SizeBasis(
                titles.of(project),
                project,
                use,
                estimate.orElse(null),
                limits.of(project.branchId(), project.site().utilityId()),
                List.copyOf(missing));
    }
}
