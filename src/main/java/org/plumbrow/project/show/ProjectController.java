package org.plumbrow.project.show;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.project.JournalReader;
import org.plumbrow.project.NextGate;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectPanel;
import org.plumbrow.project.ProjectStages;
import org.plumbrow.project.ProjectTitle;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** One project: what is missing, who acts next, when, and what happened. Other rooms add their sections. */
@Controller
class ProjectController {

    private static final int LINES = 6;

    private final Projects projects;
    private final ProjectTitles titles;
    private final ProjectStages stages;
    private final NextGate gate;
    private final JournalReader journal;
    private final List<ProjectPanel> panels;
    private final Words words;

    ProjectController(
            Projects projects,
            ProjectTitles titles,
            ProjectStages stages,
            NextGate gate,
            JournalReader journal,
            List<ProjectPanel> panels,
            Words words) {
        this.projects = projects;
        this.titles = titles;
        this.stages = stages;
        this.gate = gate;
        this.journal = journal;
        this.panels = panels.stream()
                .sorted(Comparator.comparingInt(ProjectPanel::order))
                .toList();
        this.words = words;
    }

    @GetMapping("/projects/{projectId}")
    @Transactional(readOnly = true)
    public String show(@PathVariable UUID projectId, Model model) {
        ProjectFacts project = projects.facts(projectId);
        ProjectTitle title = titles.of(project);
        Optional<NextGate.View> next = gate.of(project);
        model.addAttribute("project", project);
        model.addAttribute("sheet", title);
        model.addAttribute("answer", ProjectAnswer.sentence(project, title, next, words.day(title.plannedOn())));
        model.addAttribute("gate", next.orElse(null));
        model.addAttribute(
                "first",
                next.flatMap(view -> view.missing().stream().findFirst()).orElse(null));
        model.addAttribute("posts", posts(project, next, stages.reached(projectId)));
        model.addAttribute(
                "panels",
                panels.stream().flatMap(panel -> panel.show(project).stream()).toList());
        model.addAttribute("lines", journal.newest(project, LINES));
        return "project/project";
    }

    private List<ProjectAnswer.Post> posts(
            ProjectFacts project, Optional<NextGate.View> next, Map<Stage, ProjectStages.Reached> reached) {
        return Arrays.stream(Stage.values())
                .map(stage -> post(
                        stage,
                        project,
                        next,
                        Optional.ofNullable(reached.get(stage)).map(ProjectStages.Reached::on)))
                .toList();
    }

    private ProjectAnswer.Post post(
            Stage stage, ProjectFacts project, Optional<NextGate.View> next, Optional<LocalDate> on) {
        if (stage.isReachedAt(project.stage())) {
            return new ProjectAnswer.Post(
                    stage, "driven", on.map(words::fullDay).orElse(""));
        }
        if (stage.isNextAfter(project.stage())) {
            String missing = next.map(view -> view.missing().size() + " of " + view.items() + " items missing")
                    .orElse("");
            return new ProjectAnswer.Post(stage, "next", missing);
        }
        return new ProjectAnswer.Post(stage, "", "");
    }
}
