package org.plumbrow.cutover.after;

import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** The office follows the day: a page asks for itself every few seconds, and without JavaScript shows a way to do so. */
@Controller
class LiveController {

    private final LiveDays live;
    private final LearnedMinutes learned;

    LiveController(LiveDays live, LearnedMinutes learned) {
        this.live = live;
        this.learned = learned;
    }

    @GetMapping("/cutovers/today")
    String today(Model model) {
        model.addAttribute("view", live.today());
        return "cutover/live-today";
    }

    @GetMapping("/projects/{projectId}/outage/live")
    String one(@PathVariable UUID projectId, Model model) {
        model.addAttribute("view", live.one(projectId));
        return "cutover/live";
    }

    @GetMapping("/projects/{projectId}/outage/learned")
    String learned(@PathVariable UUID projectId, Model model) {
        model.addAttribute("view", learned.of(projectId));
        return "cutover/learned";
    }
}
