package org.plumbrow.schedule.whichdate;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.PermitOfficeFacts;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.schedule.forecast.MilestoneForecast;
import org.plumbrow.schedule.plan.PlannedPromise;
import org.plumbrow.schedule.plan.ThoughtJob;
import org.plumbrow.schedule.plan.WhatIf;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.May;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Thinks of a job as signed today, plans it with the others, and forecasts it. */
@Service
@Transactional(readOnly = true)
class WhichDate {

    /** Always the same: chance hangs on it, and the same question has the same answer. */
    private static final UUID THOUGHT = new UUID(0, 1);

    private final Access access;
    private final BranchSettings settings;
    private final Projects projects;
    private final WhatIf whatIf;
    private final Clock clock;

    WhichDate(Access access, BranchSettings settings, Projects projects, WhatIf whatIf, Clock clock) {
        this.access = access;
        this.settings = settings;
        this.projects = projects;
        this.whatIf = whatIf;
        this.clock = clock;
    }

    /** What can be chosen, by id: those that have not ended. */
    record Choices(Map<UUID, String> utilities, Map<UUID, String> offices) {}

    /** @param on when the system is likely to be on @param forecasts of all milestones @param worse promises that break or break by more, by project */
    record Answer(MilestoneForecast on, List<MilestoneForecast> forecasts, List<Worse> worse) {}

    /** @param daysLate working days after its promise */
    record Worse(UUID projectId, String project, int daysLate) {}

    Choices choices() {
        UUID branch = access.require(May.SEE_LOOK_AHEAD).id();
        Map<UUID, String> utilities = new LinkedHashMap<>();
        settings.utilities(branch).stream()
                .filter(one -> one.endedOn().isEmpty())
                .forEach((UtilityFacts one) -> utilities.put(one.id(), one.name()));
        Map<UUID, String> offices = new LinkedHashMap<>();
        settings.permitOffices(branch).stream()
                .filter(one -> one.endedOn().isEmpty())
                .forEach((PermitOfficeFacts one) -> offices.put(one.id(), one.name()));
        return new Choices(utilities, offices);
    }

    /** @return empty where some of its work has no crew that could do it */
    Optional<Answer> of(WhichDateForm.Job job) {
        BranchCard branch = access.require(May.SEE_LOOK_AHEAD);
        WhatIf.Added added = whatIf.adding(thought(branch, job));
        return added.forecasts().stream()
                .filter(one -> one.milestone() == Milestone.SYSTEM_ON)
                .findFirst()
                .map(on ->
                        new Answer(on, added.forecasts(), worse(added.changes().breaking())));
    }

    private List<Worse> worse(List<PlannedPromise> breaking) {
        Map<UUID, String> names =
                projects
                        .factsUnchecked(
                                breaking.stream().map(PlannedPromise::projectId).toList())
                        .stream()
                        .collect(Collectors.toMap(ProjectFacts::id, ProjectFacts::name));
        return breaking.stream()
                .map(promise ->
                        new Worse(promise.projectId(), names.getOrDefault(promise.projectId(), ""), promise.daysLate()))
                .toList();
    }

    private ProjectFacts thought(BranchCard branch, WhichDateForm.Job job) {
        return new ThoughtJob(job.mounting(), job.kwDc(), job.trenchFt(), job.utilityId(), job.permitOfficeId())
                .of(THOUGHT, branch.id(), clock.instant());
    }
}
