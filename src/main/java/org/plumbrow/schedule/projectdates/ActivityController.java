package org.plumbrow.schedule.projectdates;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.schedule.activity.Progress;
import org.plumbrow.schedule.activity.Recorded;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
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
import org.springframework.web.util.UriComponentsBuilder;

/** One activity of a project: record what happened, settle its start with the effect shown first, let the plan decide. */
@Controller
@RequestMapping("/projects/{projectId}/schedule/{activityKey}")
class ActivityController {

    private static final String PAGE = "schedule/activity";
    private static final String BACK = "redirect:/projects/{projectId}/schedule/{activityKey}";

    private final ActivityPage page;
    private final Progress progress;
    private final ProjectTitles titles;
    private final ProjectAccess projectAccess;

    ActivityController(ActivityPage page, Progress progress, ProjectTitles titles, ProjectAccess projectAccess) {
        this.page = page;
        this.progress = progress;
        this.titles = titles;
        this.projectAccess = projectAccess;
    }

    @GetMapping
    String show(@PathVariable UUID projectId, @PathVariable String activityKey, Model model) {
        fill(projectId, activityKey, model);
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
        if (!errors.hasErrors() && fix.day() == null) {
            errors.rejectValue("day", "refused", "Choose the day on which it should start.");
        }
        fill(projectId, activityKey, model);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return PAGE;
        }
        model.addAttribute("effect", page.effect(projectId, activityKey, fix.pin()));
        return PAGE;
    }

    @PostMapping("/record")
    String record(
            @PathVariable UUID projectId,
            @PathVariable String activityKey,
            @Valid @ModelAttribute("form") RecordForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        projectAccess.require(projectId, May.RECORD_PROGRESS);
        ActivityView before = page.show(projectId, activityKey).activity();
        return answer(projectId, activityKey, errors, model, response, () -> {
            Optional<Refusal> refused = form.outOfOrder()
                    .map(sentence -> new Refusal("finished", sentence))
                    .or(() -> progress.record(before.id(), form.version(), form.recorded()));
            if (refused.isEmpty()) {
                Flash.doneWithUndo(next, "Recorded. The plan is computed anew.", undo(projectId, before, form));
            }
            return refused;
        });
    }

    @PostMapping("/fix")
    String fix(
            @PathVariable UUID projectId,
            @PathVariable String activityKey,
            @Valid @ModelAttribute("fix") FixForm fix,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        projectAccess.require(projectId, May.CHANGE_PLAN);
        UUID activityId = page.show(projectId, activityKey).activity().id();
        return answer(projectId, activityKey, errors, model, response, () -> {
            Optional<Refusal> refused = progress.fix(activityId, fix.version(), fix.pin());
            if (refused.isEmpty()) {
                Flash.doneWithUndo(
                        next,
                        "The start is settled. The plan is computed anew.",
                        address(projectId, activityKey, "release", fix.version() + 1)
                                .toUriString());
            }
            return refused;
        });
    }

    @PostMapping("/release")
    String release(
            @PathVariable UUID projectId,
            @PathVariable String activityKey,
            @RequestParam(name = "version") Long version,
            RedirectAttributes next) {
        projectAccess.require(projectId, May.CHANGE_PLAN);
        progress.release(page.show(projectId, activityKey).activity().id(), version);
        Flash.done(next, "The plan decides this date again.");
        return BACK;
    }

    /** An act that may be refused in words. */
    private interface Act {
        Optional<Refusal> run();
    }

    private String answer(
            UUID projectId,
            String activityKey,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            Act act) {
        try {
            if (!errors.hasErrors()) {
                act.run().ifPresent(no -> no.putAt(errors));
            }
        } catch (EditedMeanwhile | OptimisticLockingFailureException newer) {
            return overNewer(projectId, activityKey, model, response);
        }
        if (!errors.hasErrors()) {
            return BACK;
        }
        response.setStatus(422);
        fill(projectId, activityKey, model);
        return PAGE;
    }

    /** Theirs stands on the page, yours in the form, ready to be written over theirs knowingly. */
    private String overNewer(UUID projectId, String activityKey, Model model, HttpServletResponse response) {
        long now = page.show(projectId, activityKey).activity().row().version();
        Object form = model.getAttribute("form") instanceof RecordForm typed ? typed.over(now) : null;
        Object fix = model.getAttribute("fix") instanceof FixForm typed ? typed.over(now) : null;
        model.asMap().keySet().removeIf(name -> name.startsWith(BindingResult.MODEL_KEY_PREFIX));
        if (form != null) {
            model.addAttribute("form", form);
        }
        if (fix != null) {
            model.addAttribute("fix", fix);
        }
        model.addAttribute("newer", Boolean.TRUE);
        response.setStatus(409);
        fill(projectId, activityKey, model);
        return PAGE;
    }

    /** A form that was posted stays as it is, typed words and errors with it; the others open as the activity stands. */
    private void fill(UUID projectId, String activityKey, Model model) {
        ActivityPage.Shown shown = page.show(projectId, activityKey);
        model.addAttribute("shown", shown);
        model.addAttribute("sheet", titles.of(shown.project()));
        if (isNotPosted("form", model)) {
            model.addAttribute(
                    "form", RecordForm.of(shown.activity().row(), ActivityPage.bookedCrew(shown.activity())));
        }
        if (isNotPosted("fix", model)) {
            model.addAttribute(
                    "fix",
                    FixForm.of(
                            shown.activity().row(), shown.activity().planned().map(row -> row.start())));
        }
    }

    /** A form that did not convert is null, and its words are with its errors only. */
    private static boolean isNotPosted(String form, Model model) {
        return model.getAttribute(form) == null && !model.containsAttribute(BindingResult.MODEL_KEY_PREFIX + form);
    }

    private static String undo(UUID projectId, ActivityView before, RecordForm form) {
        Recorded was = before.row().recorded();
        UriComponentsBuilder address = address(projectId, before.row().key(), "record", form.version() + 1);
        was.started().map(HalfDay::date).ifPresent(day -> address.queryParam("started", day));
        was.started().map(HalfDay::half).ifPresent(half -> address.queryParam("startedHalf", half));
        was.finished().map(HalfDay::date).ifPresent(day -> address.queryParam("finished", day));
        was.finished().map(HalfDay::half).ifPresent(half -> address.queryParam("finishedHalf", half));
        was.crewId().ifPresent(crew -> address.queryParam("crewId", crew));
        was.halfDaysLeft().ifPresent(left -> address.queryParam("daysLeft", left / 2.0));
        was.answerExpected().ifPresent(day -> address.queryParam("expected", day));
        return address.toUriString();
    }

    private static UriComponentsBuilder address(UUID projectId, String activityKey, String act, long version) {
        return UriComponentsBuilder.fromPath("/projects/{project}/schedule/{activity}/{act}")
                .queryParam("version", version)
                .uriVariables(java.util.Map.of("project", projectId, "activity", activityKey, "act", act));
    }
}
