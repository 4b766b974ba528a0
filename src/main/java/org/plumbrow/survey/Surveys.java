package org.plumbrow.survey;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What surveys have read, for other rooms. */
@Service
@Transactional(readOnly = true)
public class Surveys {

    private final SurveyRows rows;
    private final ProjectAccess access;

    Surveys(SurveyRows rows, ProjectAccess access) {
        this.rows = rows;
        this.access = access;
    }

    /**
     * The survey of a project, empty while nothing is recorded.
     *
     * @throws org.plumbrow.web.NotFound if the project is not there for who asks
     * @throws org.plumbrow.web.NotForYourRole if it is not for their role
     */
    public SurveyFacts facts(UUID projectId) {
        access.require(projectId, May.SEE_PROJECTS);
        return factsUnchecked(projectId);
    }

    /** For background work and rules: nobody is asked for; only the branch wall holds. */
    public SurveyFacts factsUnchecked(UUID projectId) {
        return FactsReading.of(projectId, rows.of(projectId));
    }

    /** As {@link #factsUnchecked(UUID)} for several at once, in their order and in one query. */
    public List<SurveyFacts> factsUnchecked(Collection<UUID> projectIds) {
        Map<UUID, SurveySheet> sheets = rows.of(projectIds);
        return projectIds.stream()
                .map(id -> FactsReading.of(id, sheets.getOrDefault(id, SurveySheet.EMPTY)))
                .toList();
    }
}
