package org.plumbrow.cutover.daylog;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.web.Flash;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The steps of the day, before the day. */
@Controller
class DayStepsController {

    private final DaySteps steps;

    DayStepsController(DaySteps steps) {
        this.steps = steps;
    }

    @GetMapping("/projects/{projectId}/outage/steps")
    String steps(@PathVariable UUID projectId, Model model) {
        return page(projectId, List.of(), model);
    }

    private String page(UUID projectId, List<Refusal> refusals, Model model) {
        model.addAttribute("view", steps.sheet(projectId));
        model.addAttribute("refusals", refusals);
        return "cutover/steps";
    }

    @PostMapping("/projects/{projectId}/outage/steps")
    String make(
            @PathVariable UUID projectId,
            @RequestParam(defaultValue = "") String revision,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Optional<Refusal> no = steps.make(projectId, revision);
        if (no.isPresent()) {
            response.setStatus(422);
            return page(projectId, List.of(no.get()), model);
        }
        Flash.done(next, "Made from design revision " + revision + ".");
        return "redirect:/projects/{projectId}/outage/steps";
    }
}
