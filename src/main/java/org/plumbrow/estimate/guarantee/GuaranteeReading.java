package org.plumbrow.estimate.guarantee;

import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.estimate.EstimateFacts;
import org.plumbrow.estimate.Estimates;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectEditing;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitle;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads what a project's guarantee shows. Not read-only: a yield that was computed anew is kept. */
@Service
@Transactional
class GuaranteeReading {

    private final Projects projects;
    private final ProjectAccess access;
    private final ProjectTitles titles;
    private final ProjectEditing contracts;
    private final Estimates estimates;
    private final GuaranteeRows rows;

    GuaranteeReading(
            Projects projects,
            ProjectAccess access,
            ProjectTitles titles,
            ProjectEditing contracts,
            Estimates estimates,
            GuaranteeRows rows) {
        this.projects = projects;
        this.access = access;
        this.titles = titles;
        this.contracts = contracts;
        this.estimates = estimates;
        this.rows = rows;
    }

    /** @param contractVersion carried by the form that writes the promise */
    record Page(ProjectTitle title, GuaranteeView view, long contractVersion) {}

    /** @param triedKwh a promise to be weighed beside the usual ones; null for none */
    Page page(UUID projectId, @Nullable Integer triedKwh) {
        access.require(projectId, May.SEE_MONEY);
        ProjectFacts project = projects.facts(projectId);
        Optional<EstimateFacts> facts = estimates.of(projectId);
        GuaranteeView view = GuaranteeView.of(
                project,
                facts.orElse(null),
                facts.isPresent() ? java.util.List.of() : estimates.missing(projectId),
                rows.of(projectId).map(GuaranteeRows.Kept::terms).orElse(null),
                triedKwh);
        return new Page(titles.of(project), view, contracts.contract(projectId).version());
    }

    /** @param kept null while nobody has written any */
    record Terms(ProjectTitle title, GuaranteeRows.@Nullable Kept kept) {}

    @Transactional(readOnly = true)
    public Terms terms(UUID projectId) {
        access.require(projectId, May.EDIT_PROJECT);
        return new Terms(titles.of(projectId), rows.of(projectId).orElse(null));
    }
}
