package org.plumbrow.schedule.projectdates;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
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
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.util.UriComponentsBuilder;

/** One activity of a project, and what people record of it. Its start is settled by {@link StartController}. */
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
        try {
            if (!errors.hasErrors()) {
                form.outOfOrder()
                        .map(sentence -> new Refusal("finished", sentence))
                        .or(() -> progress.record(before.id(), form.version(), form.recorded()))
                        .ifPresent(no -> no.putAt(errors));
            }
        } catch (EditedMeanwhile | OptimisticLockingFailureException newer) {
            return overNewer(projectId, activityKey, form, model, response);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            fill(projectId, activityKey, model);
            return PAGE;
        }
        Flash.doneWithUndo(next, "Recorded. The plan is computed anew.", undo(projectId, before, form));
        return BACK;
    }

    /** Theirs stands on the page, yours in the form, ready to be written over theirs knowingly. */
    private String overNewer(
            UUID projectId, String activityKey, RecordForm typed, Model model, HttpServletResponse response) {
        model.asMap().keySet().removeIf(name -> name.startsWith(BindingResult.MODEL_KEY_PREFIX));
        model.addAttribute(
                "form",
                typed.over(page.show(projectId, activityKey).activity().row().version()));
        model.addAttribute("newer", Boolean.TRUE);
        response.setStatus(409);
        fill(projectId, activityKey, model);
        return PAGE;
    }

    /** A form that was posted stays as it is, typed words and errors with it; else it opens as the activity stands. */
    private void fill(UUID projectId, String activityKey, Model model) {
        ActivityPage.Shown shown = page.show(projectId, activityKey);
        model.addAttribute("shown", shown);
        model.addAttribute("sheet", titles.of(shown.project()));
        if (model.getAttribute("form") == null && !model.containsAttribute(BindingResult.MODEL_KEY_PREFIX + "form")) {
            model.addAttribute(
                    "form", RecordForm.of(shown.activity().row(), ActivityPage.bookedCrew(shown.activity())));
        }
    }

    private static String undo(UUID projectId, ActivityView before, RecordForm form) {
        Recorded was = before.row().recorded();
        UriComponentsBuilder address = UriComponentsBuilder.fromPath("/projects/{project}/schedule/{activity}/record")
                .queryParam("version", form.version() + 1)
                .uriVariables(java.util.Map.of(
                        "project", projectId, "activity", before.row().key()));
        was.started().map(HalfDay::date).ifPresent(day -> address.queryParam("started", day));
        was.started().map(HalfDay::half).ifPresent(half -> address.queryParam("startedHalf", half));
        was.finished().map(HalfDay::date).ifPresent(day -> address.queryParam("finished", day));
        was.finished().map(HalfDay::half).ifPresent(half -> address.queryParam("finishedHalf", half));
        was.crewId().ifPresent(crew -> address.queryParam("crewId", crew));
        was.halfDaysLeft().ifPresent(left -> address.queryParam("daysLeft", left / 2.0));
        was.answerExpected().ifPresent(day -> address.queryParam("expected", day));
        return address.toUriString();
    }
}
