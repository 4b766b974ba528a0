package org.plumbrow.project;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Mounting;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Makes the title block of a project for the person who asks. */
@Service
@Transactional(readOnly = true)
public class ProjectTitles {

    private final Projects projects;
    private final ProjectAccess access;
    private final ProjectStages stages;
    private final JdbcClient jdbc;
    private final List<ProjectPage> pages;

    ProjectTitles(
            Projects projects, ProjectAccess access, ProjectStages stages, JdbcClient jdbc, List<ProjectPage> pages) {
        this.projects = projects;
        this.access = access;
        this.stages = stages;
        this.jdbc = jdbc;
        this.pages = pages.stream()
                .sorted(Comparator.comparingInt(ProjectPage::order))
                .toList();
    }

    /** @throws org.plumbrow.web.NotFound @throws org.plumbrow.web.NotForYourRole as {@link Projects#facts} */
    public ProjectTitle of(UUID projectId) {
        return of(projects.facts(projectId));
    }

    /** For a caller who has read the facts already. */
    public ProjectTitle of(ProjectFacts facts) {
        Plan plan = jdbc.sql("select planned_on, late from project_line where project_id = ?")
                .param(facts.id())
                .query(Plan.class)
                .single();
        return new ProjectTitle(
                facts.id(),
                facts.number(),
                facts.name(),
                facts.site().address(),
                onSite(facts.site()),
                facts.contract().systemKwDc(),
                facts.contract().systemKwAc(),
                facts.contract().mounting().map(Mounting::words).orElse(""),
                Stage.wordsOf(facts.stage()),
                reachedOn(facts),
                facts.standing(),
                facts.promise() == null ? null : facts.promise().milestone().words(),
                facts.promise() == null ? null : facts.promise().date(),
                shape(plan),
                plan.plannedOn,
                facts.inCharge(Duty.PROJECT_MANAGER)
                        .map(ProjectFacts.InCharge::name)
                        .orElse(null),
                links(facts));
    }

    private record Plan(@Nullable LocalDate plannedOn, boolean late) {}

    private static String shape(Plan plan) {
        if (plan.late) {
            return "trouble";
        }
        return plan.plannedOn == null ? "unknown" : "part";
    }

    private @Nullable LocalDate reachedOn(ProjectFacts facts) {
        return Optional.ofNullable(facts.stage())
                .map(stage -> stages.reached(facts.id()).get(stage))
                .map(ProjectStages.Reached::on)
                .orElse(null);
    }

    private List<ProjectTitle.Link> links(ProjectFacts facts) {
        return pages.stream()
                .filter(page -> access.may(facts.branchId(), page.act()))
                .map(page -> new ProjectTitle.Link(page.key(), "/projects/" + facts.id() + page.suffix()))
                .toList();
    }

    private static String onSite(ProjectFacts.Site site) {
        List<String> words = new ArrayList<>(
                site.loads().stream().sorted().map(SiteLoad::words).collect(Collectors.toList()));
        if (site.generator()) {
            words.add("generator");
        }
        if (site.threePhase()) {
            words.add("three phases");
        }
        return String.join(", ", words);
    }
}
