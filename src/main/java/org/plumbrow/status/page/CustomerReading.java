package org.plumbrow.status.page;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.cutover.OutageFacts;
import org.plumbrow.cutover.Outages;
import org.plumbrow.cutover.daylog.DayStories;
import org.plumbrow.cutover.daylog.DayStory;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectStages;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.schedule.PublishedPlan;
import org.plumbrow.status.CustomerSharing;
import org.plumbrow.status.CustomerTerms;
import org.plumbrow.status.DutyPhones;
import org.plumbrow.status.SharedPaper;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads what the customer's page is made from. Whoever calls has let them in; the branch wall holds. */
@Service
@Transactional(readOnly = true)
class CustomerReading {

    private final Projects projects;
    private final BranchSettings settings;
    private final ProjectStages stages;
    private final PublishedPlan plan;
    private final Outages outages;
    private final DayStories days;
    private final CustomerSharing sharing;
    private final EvidenceStore evidence;
    private final DutyPhones phones;
    private final Clock clock;

    CustomerReading(
            Projects projects,
            BranchSettings settings,
            ProjectStages stages,
            PublishedPlan plan,
            Outages outages,
            DayStories days,
            CustomerSharing sharing,
            EvidenceStore evidence,
            DutyPhones phones,
            Clock clock) {
        this.projects = projects;
        this.settings = settings;
        this.stages = stages;
        this.plan = plan;
        this.outages = outages;
        this.days = days;
        this.sharing = sharing;
        this.evidence = evidence;
        this.phones = phones;
        this.clock = clock;
    }

    /** @throws NotFound if there is no such project within the branch */
    CustomerFacts of(UUID projectId) {
        ProjectFacts project = projects.factsUnchecked(projectId);
        BranchFacts branch = settings.facts(project.branchId());
        CustomerTerms terms = sharing.terms(projectId).terms();
        List<SharedPaper> shared = sharing.papers(projectId);
        Map<UUID, EvidenceFacts> there = there(shared, terms);
        Instant now = clock.instant();
        List<OutageFacts> windows = outages.ofProject(projectId);
        return new CustomerFacts(
                project,
                branch.name(),
                branch.zone(),
                now,
                reached(projectId),
                plan.of(projectId),
                windows,
                terms,
                shown(shared, there),
                terms.shutOffPhotoId() != null && there.containsKey(terms.shutOffPhotoId()),
                phones.of(project),
                day(Situation.of(project, windows, now, branch.zone()), branch.zone(), now));
    }

    /** Of a day that is under way, or is to begin today. */
    private Optional<DayStory> day(Situation situation, ZoneId zone, Instant now) {
        return Optional.ofNullable(situation.window())
                .filter(window -> situation.goesOnToday(LocalDate.ofInstant(now, zone)))
                .flatMap(window -> days.of(window.id(), zone));
    }

    private Map<Stage, LocalDate> reached(UUID projectId) {
        Map<Stage, LocalDate> days = new EnumMap<>(Stage.class);
        stages.reached(projectId).forEach((stage, reached) -> days.put(stage, reached.on()));
        return days;
    }

    /** What is shared and has not been hidden since. */
    private Map<UUID, EvidenceFacts> there(List<SharedPaper> shared, CustomerTerms terms) {
        Set<UUID> asked = new HashSet<>();
        shared.forEach(paper -> asked.add(paper.evidenceId()));
        if (terms.shutOffPhotoId() != null) {
            asked.add(terms.shutOffPhotoId());
        }
        return asked.isEmpty()
                ? Map.of()
                : evidence.of(asked).stream()
                        .filter(paper -> !paper.hidden())
                        .collect(Collectors.toMap(EvidenceFacts::id, Function.identity()));
    }

    private static List<CustomerFacts.Shown> shown(List<SharedPaper> shared, Map<UUID, EvidenceFacts> there) {
        List<CustomerFacts.Shown> shown = new ArrayList<>();
        for (SharedPaper paper : shared) {
            EvidenceFacts facts = there.get(paper.evidenceId());
            if (facts != null) {
                shown.add(new CustomerFacts.Shown(paper.slot(), paper.title(), facts));
            }
        }
        return shown;
    }
}
