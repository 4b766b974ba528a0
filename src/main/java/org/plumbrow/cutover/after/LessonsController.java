package org.plumbrow.cutover.after;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.Written;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** After the day: each person writes what went well and what to do otherwise next time. */
@Controller
class LessonsController {

    private static final String ADDRESS = "/projects/{projectId}/outage/lessons/{windowId}";

    private final Lessons lessons;
    private final Saving saving;

    LessonsController(Lessons lessons, Saving saving) {
        this.lessons = lessons;
        this.saving = saving;
    }

    record LessonForm(
            @Nullable String wentWell,
            @Nullable String nextTime,
            @Nullable String version) {

        List<Written> written() {
            return List.of(
                    Written.of("What went well", "wentWell", Entered.text(wentWell)),
                    Written.of("What to do otherwise next time", "nextTime", Entered.text(nextTime)));
        }
    }

    private static LessonForm form(Lessons.Page page) {
        return page.own()
                .map(own -> new LessonForm(own.wentWell(), own.nextTime(), Long.toString(own.version())))
                .orElse(new LessonForm("", "", "-1"));
    }

    @GetMapping(ADDRESS)
    String lessons(@PathVariable UUID projectId, @PathVariable UUID windowId, Model model) {
        Lessons.Page page = lessons.page(projectId, windowId);
        model.addAttribute("lessonForm", form(page));
        return show(page, model);
    }

    private static String show(Lessons.Page page, Model model) {
        model.addAttribute("view", page);
        return "cutover/lessons";
    }

    @PostMapping(ADDRESS)
    String write(
            @PathVariable UUID projectId,
            @PathVariable UUID windowId,
            @ModelAttribute("lessonForm") LessonForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Entered entered = new Entered(errors);
        String well = entered.within("wentWell", "what went well", form.wentWell(), Lessons.LONGEST);
        String otherwise = entered.within("nextTime", "what to do otherwise", form.nextTime(), Lessons.LONGEST);
        return saving.of(errors, response, () -> show(lessons.page(projectId, windowId), model))
                .make(
                        () -> lessons.write(projectId, windowId, well, otherwise, Entered.version(form.version())),
                        () -> {
                            Flash.done(next, "Written down for the next day of this kind.");
                            return "redirect:" + ADDRESS;
                        },
                        model,
                        form::written,
                        () -> {
                            LessonForm now = form(lessons.page(projectId, windowId));
                            return new Saving.Theirs(
                                    "what you wrote of that day",
                                    "/projects/" + projectId + "/outage/lessons/" + windowId,
                                    Entered.version(now.version()),
                                    now.written());
                        });
    }
}
