package org.plumbrow.estimate.place;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import org.plumbrow.branch.Saving;
import org.plumbrow.estimate.place.PlaceReading.Deciding;
import org.plumbrow.estimate.place.Placement.Choice;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Option;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Roof or ground: both beside one another, and what was decided with the customer. */
@Controller
class PlacePages {

    private static final int ORDER = 110;
    private static final String PAGE = "/projects/{projectId}/roof-or-ground";
    private static final String DECISION = PAGE + "/decision";
    private static final List<Option> CHOICES = List.of(
            new Option(Choice.ROOF.name(), "On the roof"),
            new Option(Choice.GROUND.name(), "On the ground"),
            new Option(Choice.BOTH.name(), "On both"),
            new Option(Choice.NOT_YET.name(), "Not decided yet"));

    private final PlaceReading reading;
    private final Placements placements;
    private final Saving saving;

    PlacePages(PlaceReading reading, Placements placements, Saving saving) {
        this.reading = reading;
        this.placements = placements;
        this.saving = saving;
    }

    @Bean
    static ProjectPage roofOrGroundPage() {
        return new ProjectPage(ORDER, "estimate.place.page", "/roof-or-ground", May.SEE_ESTIMATE);
    }

    @GetMapping(PAGE)
    String show(@PathVariable UUID projectId, Model model) {
        PlaceView view = reading.of(projectId);
        model.addAttribute("sheet", view.title());
        model.addAttribute("view", view);
        return "estimate/roof-or-ground";
    }

    @GetMapping(DECISION)
    String decision(@PathVariable UUID projectId, Model model) {
        Deciding deciding = reading.deciding(projectId);
        model.addAttribute("decisionForm", deciding.proposed());
        return form(deciding, model);
    }

    private static String form(Deciding deciding, Model model) {
        model.addAttribute("sheet", deciding.title());
        model.addAttribute("choices", CHOICES);
        return "estimate/placement";
    }

    @PostMapping(DECISION)
    String decide(
            @PathVariable UUID projectId,
            @ModelAttribute("decisionForm") DecisionForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Deciding before = reading.deciding(projectId);
        Placement to = form.read(new Entered(errors));
        return saving.of(errors, response, () -> form(before, model))
                .make(
                        () -> placements.decide(projectId, to),
                        () -> {
                            Flash.done(next, "Written down. The journal says by whom.");
                            return "redirect:" + PAGE;
                        },
                        model,
                        form::written,
                        () -> theirs(projectId));
    }

    private Saving.Theirs theirs(UUID projectId) {
        Placement now = reading.deciding(projectId).now();
        return new Saving.Theirs(
                "what was decided",
                "/projects/" + projectId + "/roof-or-ground/decision",
                now.version(),
                DecisionForm.of(now).written());
    }
}
