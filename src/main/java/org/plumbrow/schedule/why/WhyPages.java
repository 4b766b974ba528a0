package org.plumbrow.schedule.why;

import java.util.UUID;
import org.plumbrow.project.ProjectTitles;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The page that explains one date. */
@Controller
class WhyPages {

    private final WhyThisDate why;
    private final ProjectTitles titles;

    WhyPages(WhyThisDate why, ProjectTitles titles) {
        this.why = why;
        this.titles = titles;
    }

    @GetMapping("/projects/{projectId}/schedule/{activityKey}/why")
    String show(@PathVariable UUID projectId, @PathVariable String activityKey, Model model) {
        WhyView view = why.of(projectId, activityKey);
        model.addAttribute("view", view);
        model.addAttribute("sheet", titles.of(view.project()));
        return "schedule/why";
    }
}
