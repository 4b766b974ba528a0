package org.plumbrow.schedule.crewweek;

import java.util.List;
import java.util.UUID;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The steps of a crew's first morning at a site. */
@Controller
@RequestMapping("/projects/{projectId}/day-one")
class DayOnePages {

    private static final String BACK = "redirect:/projects/{projectId}/day-one";

    private final DayOne dayOne;
    private final ProjectTitles titles;
    private final DayOneSayings sayings;

    DayOnePages(DayOne dayOne, ProjectTitles titles, DayOneSayings sayings) {
        this.dayOne = dayOne;
        this.titles = titles;
        this.sayings = sayings;
    }

    @GetMapping
    String show(@PathVariable UUID projectId, Model model) {
        List<DayOne.Ticked> steps = dayOne.of(projectId);
        model.addAttribute("steps", steps);
        model.addAttribute(
                "open", steps.stream().filter(step -> step.tick().isEmpty()).count());
        model.addAttribute("sheet", titles.of(projectId));
        return "schedule/day-one";
    }

    @PostMapping("/{dayOneStep}/tick")
    String tick(@PathVariable UUID projectId, @PathVariable String dayOneStep, RedirectAttributes next) {
        DayOneStep step = step(dayOneStep);
        DayOne.Answer answer = dayOne.tick(projectId, step);
        if (answer.made()) {
            Flash.doneWithUndo(
                    next,
                    step.words() + ": ticked.",
                    "/projects/%s/day-one/%s/take-back?version=%d"
                            .formatted(
                                    projectId,
                                    dayOneStep,
                                    answer.stands().orElseThrow().version()));
        } else {
            Flash.done(next, sayings.againstTick(step, answer));
        }
        return BACK;
    }

    @PostMapping("/{dayOneStep}/take-back")
    String takeBack(
            @PathVariable UUID projectId,
            @PathVariable String dayOneStep,
            @RequestParam(defaultValue = "") String version,
            RedirectAttributes next) {
        DayOneStep step = step(dayOneStep);
        DayOne.Answer answer = dayOne.takeBack(projectId, step, Entered.version(version));
        Flash.done(next, answer.made() ? "Taken back: it is open again." : sayings.againstTakingBack(step, answer));
        return BACK;
    }

    static DayOneStep step(String path) {
        return DayOneStep.at(path).orElseThrow(NotFound::new);
    }
}
