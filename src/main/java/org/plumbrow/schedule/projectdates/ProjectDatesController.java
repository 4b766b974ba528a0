package org.plumbrow.schedule.projectdates;

import java.util.UUID;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.web.May;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** All dates of one project. */
@Controller
class ProjectDatesController {

    private final ProjectDates dates;
    private final ProjectTitles titles;

    ProjectDatesController(ProjectDates dates, ProjectTitles titles) {
        this.dates = dates;
        this.titles = titles;
    }

    @GetMapping("/projects/{projectId}/schedule")
    String show(@PathVariable UUID projectId, Model model) {
        DatesView view = dates.of(projectId);
        model.addAttribute("view", view);
        model.addAttribute("sheet", titles.of(view.project()));
        return "schedule/project-dates";
    }

    @Configuration(proxyBeanMethods = false)
    static class Pages {
        @Bean
        ProjectPage schedulePage() {
            return new ProjectPage(400, "schedule.dates.link", "/schedule", May.SEE_PROJECTS);
        }
    }
}
