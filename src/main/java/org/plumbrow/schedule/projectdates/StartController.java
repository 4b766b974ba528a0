package org.plumbrow.schedule.projectdates;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.UUID;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.schedule.activity.Moves;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Moves the start of an activity: by form or by a drag on the crew calendar, with the effect shown before it is accepted. */
@Controller
@RequestMapping("/projects/{projectId}/schedule/{activityKey}")
class StartController {

    private static final String PAGE = "schedule/move";

    private final StartPage page;
    private final Moves moves;
    private final ProjectTitles titles;
    private final ProjectAccess projectAccess;

    StartController(StartPage page, Moves moves, ProjectTitles titles, ProjectAccess projectAccess) {
        this.page = page;
        this.moves = moves;
        this.titles = titles;
        this.projectAccess = projectAccess;
    }

    @GetMapping("/move")
    String form(@PathVariable UUID projectId, @PathVariable String activityKey, Model model) {
        projectAccess.require(projectId, May.CHANGE_PLAN);
        StartPage.Shown shown = fill(projectId, activityKey, model);
        model.addAttribute("fix", FixForm.of(shown));
        return PAGE;
    }

    /** What settling the start would do; nothing is saved. */
    @GetMapping("/effect")
    String effect(
            @PathVariable UUID projectId,
            @PathVariable String activityKey,
            @ModelAttribute("fix") FixForm fix,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        projectAccess.require(projectId, May.CHANGE_PLAN);
        StartPage.Shown shown = fill(projectId, activityKey, model);
        if (!errors.hasErrors() && fix.day() == null) {
            errors.rejectValue("day", "refused", "Choose the day on which it should start.");
        }
        if (!errors.hasErrors()) {
            moves.refusal(shown.row().id(), fix.pin()).ifPresent(no -> no.putAt(errors));
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return PAGE;
        }
        model.asMap().remove(BindingResult.MODEL_KEY_PREFIX + "fix"); // it holds the form without a reason
        model.addAttribute("fix", fix.withReason());
        show(page.effect(shown, fix.pin()), model);
        return PAGE;
    }

    @PostMapping("/fix")
    String accept(
            @PathVariable UUID projectId,
            @PathVariable String activityKey,
            @Valid @ModelAttribute("fix") FixForm fix,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        projectAccess.require(projectId, May.CHANGE_PLAN);
        StartPage.Shown shown = fill(projectId, activityKey, model);
        try {
            if (!errors.hasErrors()) {
                moves.settle(shown.row().id(), fix.seen(), fix.pin()).ifPresent(no -> no.putAt(errors));
            }
        } catch (EditedMeanwhile | OptimisticLockingFailureException newer) {
            return overNewer(projectId, activityKey, fix, model, response);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return PAGE;
        }
        Flash.done(next, "The start is settled. The plan is computed anew; the calendar shows it in a moment.");
        next.addAttribute("from", fix.day());
        return "redirect:/look-ahead/crews";
    }

    /** What is typed stays; its effect is computed on what stands by now, to be accepted knowingly. */
    private String overNewer(
            UUID projectId, String activityKey, FixForm fix, Model model, HttpServletResponse response) {
        model.addAttribute("newer", Boolean.TRUE);
        response.setStatus(409);
        StartPage.Shown now = fill(projectId, activityKey, model);
        if (moves.refusal(now.row().id(), fix.pin()).isEmpty()) {
            show(page.effect(now, fix.pin()), model);
        }
        return PAGE;
    }

    @PostMapping("/release")
    String release(
            @PathVariable UUID projectId,
            @PathVariable String activityKey,
            @RequestParam(name = "version") Long version,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        projectAccess.require(projectId, May.CHANGE_PLAN);
        try {
            moves.release(page.show(projectId, activityKey).row().id(), version);
        } catch (EditedMeanwhile | OptimisticLockingFailureException newer) {
            response.setStatus(409);
            model.addAttribute("newer", Boolean.TRUE);
            return form(projectId, activityKey, model);
        }
        Flash.done(next, "The plan decides this date again. It is computed anew.");
        return "redirect:/look-ahead/crews";
    }

    private static void show(StartEffect effect, Model model) {
        model.addAttribute("effect", effect);
        model.addAttribute("heading", effect.heading());
    }

    private StartPage.Shown fill(UUID projectId, String activityKey, Model model) {
        StartPage.Shown shown = page.show(projectId, activityKey);
        model.addAttribute("shown", shown);
        model.addAttribute("heading", "Move: " + shown.what());
        model.addAttribute("sheet", titles.of(shown.page().project()));
        return shown;
    }
}
