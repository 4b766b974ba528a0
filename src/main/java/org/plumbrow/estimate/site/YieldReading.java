package org.plumbrow.estimate.site;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
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

/** Reads what the pages of yield and orientation show. Not read-only: a result that was computed anew is kept. */
@Service
@Transactional
class YieldReading {

    private final Projects projects;
    private final ProjectAccess access;
    private final ProjectTitles titles;
    private final EstimateSource source;
    private final YieldBook book;
    private final OrientationBook orientations;

    YieldReading(
            Projects projects,
            ProjectAccess access,
            ProjectTitles titles,
            EstimateSource source,
            YieldBook book,
            OrientationBook orientations) {
        this.projects = projects;
        this.access = access;
        this.titles = titles;
        this.source = source;
        this.book = book;
        this.orientations = orientations;
    }

    record Page(ProjectTitle title, YieldView view) {}

    Page page(UUID projectId, HourView.Choice hour) {
        access.require(projectId, May.SEE_ESTIMATE);
        ProjectFacts project = projects.facts(projectId);
        Gathered gathered = source.of(project);
        Optional<EstimateFacts> facts = book.facts(gathered);
        HourView opened =
                book.inputs(gathered).map(inputs -> HourView.of(inputs, hour)).orElse(null);
        return new Page(titles.of(project), YieldView.of(project, facts, gathered.missing(), opened));
    }

    /** @param arrays names of the contract's arrays, whose rows may be given */
    record Terms(ProjectTitle title, YieldRows.Kept kept, List<EstimateSource.Offer> offered, List<String> arrays) {}

    @Transactional(readOnly = true)
    public Terms terms(UUID projectId) {
        access.require(projectId, May.EDIT_PROJECT);
        ProjectFacts project = projects.facts(projectId);
        Gathered gathered = source.of(project);
        List<ProjectFacts.ArrayFacts> arrays = project.contract().arrays();
        List<String> names = java.util.stream.IntStream.range(0, arrays.size())
                .mapToObj(at -> ContractSystem.name(at, arrays.get(at)))
                .toList();
        return new Terms(titles.of(project), gathered.kept(), gathered.offered(), names);
    }

    /** @param view null while something is missing */
    record Orientation(
            ProjectTitle title,
            List<String> missing,
            @Nullable OrientationView view) {}

    @Transactional(readOnly = true)
    public Orientation orientation(UUID projectId, OrientationView.Choice choice) {
        access.require(projectId, May.SEE_ESTIMATE);
        ProjectFacts project = projects.facts(projectId);
        Gathered gathered = source.of(project);
        OrientationView view = book.inputs(gathered)
                .map(inputs -> orientations.of(inputs, choice))
                .orElse(null);
        return new Orientation(titles.of(project), gathered.missing(), view);
    }
}
