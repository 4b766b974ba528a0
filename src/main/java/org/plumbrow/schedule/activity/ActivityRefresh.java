package org.plumbrow.schedule.activity;

import java.util.List;
import java.util.UUID;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.PlanningSettings;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Brings the stored activities up to what contracts, stages and rates say now. */
@Service
@Transactional(propagation = Propagation.MANDATORY)
public class ActivityRefresh {

    private final ActivityList list;
    private final Projects projects;
    private final BranchSettings settings;

    ActivityRefresh(ActivityList list, Projects projects, BranchSettings settings) {
        this.list = list;
        this.projects = projects;
        this.settings = settings;
    }

    /** One project, at once: for whoever records something before the first plan has run. */
    public JobActivities project(UUID projectId) {
        ProjectFacts facts = projects.factsUnchecked(projectId);
        return list.refresh(List.of(facts), settings.forPlanning(facts.branchId()))
                .get(0);
    }

    /** All projects in the branch's plan. */
    public List<JobActivities> branch(UUID branchId, PlanningSettings with) {
        return list.refresh(projects.openUnchecked(branchId), with);
    }
}
