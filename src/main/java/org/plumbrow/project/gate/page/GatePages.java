package org.plumbrow.project.gate.page;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.project.ProjectStages;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.GateView;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** How the gates of a project stand. */
@Controller
class GatePages {

    private static final int ORDER = 20;

    private final Projects projects;
    private final ProjectTitles titles;
    private final ProjectStages stages;
    private final Gates gates;

    GatePages(Projects projects, ProjectTitles titles, ProjectStages stages, Gates gates) {
        this.projects = projects;
        this.titles = titles;
        this.stages = stages;
        this.gates = gates;
    }

    @Bean
    static ProjectPage gatePage() {
        return new ProjectPage(ORDER, "gate.page", "/gate", May.SEE_PROJECTS);
    }

    /** The next gate; behind the last one the last. */
    @GetMapping("/projects/{projectId}/gate")
    @Transactional(readOnly = true)
    public String next(@PathVariable UUID projectId, Model model) {
        ProjectFacts facts = projects.facts(projectId);
        return gate(facts, Stage.after(facts.stage()).orElse(Stage.COMMISSIONED), model);
    }

    @GetMapping("/projects/{projectId}/gates/{gateStage}")
    @Transactional(readOnly = true)
    public String one(@PathVariable UUID projectId, @PathVariable String gateStage, Model model) {
        return gate(projects.facts(projectId), stage(gateStage), model);
    }

    private String gate(ProjectFacts facts, Stage to, Model model) {
        GateView gate = gates.view(facts, to);
        Map<Stage, ProjectStages.Reached> reached = stages.reached(facts.id());
        model.addAttribute("sheet", titles.of(facts));
        model.addAttribute("gate", gate);
        model.addAttribute("reached", reached.get(to));
        model.addAttribute(
                "blocking", gate.items().stream().filter(item -> item.blocks()).count());
        model.addAttribute("posts", posts(to, facts.stage(), reached));
        return "gate/gate";
    }

    /** One of the seven gates, as a link. */
    record Post(
            Stage stage,
            String path,
            boolean here,
            boolean driven,
            boolean next,
            ProjectStages.@Nullable Reached reached) {}

    private static List<Post> posts(Stage here, @Nullable Stage stage, Map<Stage, ProjectStages.Reached> reached) {
        return Arrays.stream(Stage.values())
                .map(each -> new Post(
                        each,
                        path(each),
                        each == here,
                        each.isReachedAt(stage),
                        each.isNextAfter(stage),
                        reached.get(each)))
                .toList();
    }

    static String path(Stage stage) {
        return stage.name().toLowerCase(Locale.ROOT);
    }

    /** @throws NotFound for a word that is no stage */
    static Stage stage(String path) {
        return Optional.of(path)
                .flatMap(word -> Arrays.stream(Stage.values())
                        .filter(stage -> path(stage).equals(word))
                        .findFirst())
                .orElseThrow(() -> new NotFound("gate " + path));
    }
}
