package org.plumbrow.project.edit;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.Written;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectCourse;
import org.plumbrow.project.ProjectLimits;
import org.plumbrow.project.Standing;
import org.plumbrow.project.edit.CourseForms.NameForm;
import org.plumbrow.project.edit.CourseForms.StandingForm;
import org.plumbrow.project.edit.CourseForms.WeightForm;
import org.plumbrow.web.Entered;
import org.plumbrow.web.May;
import org.plumbrow.web.Option;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What a project is called, whether it goes on, and how much a late day counts: one page each. */
@Controller
class CoursePage {

    private final ProjectCourse course;
    private final ProjectAccess access;
    private final Editing answers;

    CoursePage(ProjectCourse course, ProjectAccess access, Editing answers) {
        this.course = course;
        this.access = access;
        this.answers = answers;
    }

    @GetMapping("/projects/{projectId}/name")
    String name(@PathVariable UUID projectId, Model model) {
        ProjectCourse.Course now = opened(projectId, May.EDIT_PROJECT, model);
        model.addAttribute("form", new NameForm(now.name(), Long.toString(now.version())));
        return answers.page(projectId, model, "project/name");
    }

    @PostMapping("/projects/{projectId}/name")
    String rename(
            @PathVariable UUID projectId,
            @ModelAttribute("form") NameForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        ProjectCourse.Course now = opened(projectId, May.EDIT_PROJECT, model);
        return answers.answer(
                posted(projectId, errors, model, response, next, "project/name"),
                () -> new Entered(errors).given("name", "the name", form.name(), ProjectLimits.LONGEST_NAME),
                to -> now.name().equals(to)
                        ? Optional.empty()
                        : Optional.of(course.rename(projectId, Entered.version(form.version()), to)),
                () -> theirs(projectId, "/name", now, Written.of("name", "name", now.name())),
                () -> List.of(Written.of("name", "name", Entered.text(form.name()))));
    }

    @GetMapping("/projects/{projectId}/standing")
    String standing(@PathVariable UUID projectId, Model model) {
        ProjectCourse.Course now = opened(projectId, May.EDIT_PROJECT, model);
        String first = now.standing() == Standing.OPEN ? Standing.ON_HOLD.name() : Standing.OPEN.name();
        model.addAttribute("form", new StandingForm(first, "", "", Long.toString(now.version())));
        return answers.page(projectId, model, "project/standing");
    }

    @PostMapping("/projects/{projectId}/standing")
    String stand(
            @PathVariable UUID projectId,
            @ModelAttribute("form") StandingForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        ProjectCourse.Course now = opened(projectId, May.EDIT_PROJECT, model);
        return answers.answer(
                posted(projectId, errors, model, response, next, "project/standing"),
                () -> read(form, now, new Entered(errors)),
                to -> Optional.of(stand(projectId, Entered.version(form.version()), to)),
                () -> theirs(
                        projectId,
                        "/standing",
                        now,
                        Written.of(
                                "standing",
                                "to",
                                now.standing().name(),
                                now.standing().words())),
                () -> List.of(Written.of("standing", "to", Entered.text(form.to()))));
    }

    /** What somebody wants a project to be. */
    private record Wanted(
            Standing to,
            String reason,
            @org.jspecify.annotations.Nullable LocalDate until) {}

    private static Wanted read(StandingForm form, ProjectCourse.Course now, Entered entered) {
        Standing to = entered.choice("to", Standing.class, form.to()).orElse(now.standing());
        if (to == now.standing()) {
            entered.refuse("to", "The project is that already. Choose another.");
        }
        return new Wanted(
                to,
                entered.given("reason", "the reason", form.reason(), ProjectLimits.LONGEST_TEXT),
                to == Standing.ON_HOLD ? entered.date("until", "the day", form.until()) : null);
    }

    private int stand(UUID projectId, long version, Wanted to) {
        return switch (to.to) {
            case OPEN -> course.resume(projectId, version, to.reason);
            case ON_HOLD -> course.hold(projectId, version, to.reason, to.until);
            case CALLED_OFF -> course.callOff(projectId, version, to.reason);
        };
    }

    @GetMapping("/projects/{projectId}/weight")
    String weight(@PathVariable UUID projectId, Model model) {
        ProjectCourse.Course now = opened(projectId, May.CHANGE_PLAN, model);
        String reason = now.weightReason() == null ? "" : now.weightReason();
        model.addAttribute(
                "form", new WeightForm(Integer.toString(now.weight()), reason, Long.toString(now.version())));
        return answers.page(projectId, model, "project/weight");
    }

    @PostMapping("/projects/{projectId}/weight")
    String weigh(
            @PathVariable UUID projectId,
            @ModelAttribute("form") WeightForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        ProjectCourse.Course now = opened(projectId, May.CHANGE_PLAN, model);
        return answers.answer(
                posted(projectId, errors, model, response, next, "project/weight"),
                () -> weight(form, new Entered(errors)),
                to -> Optional.of(course.weigh(
                        projectId, Entered.version(form.version()), to, Entered.text(form.weightReason()))),
                () -> theirs(projectId, "/weight", now, Written.of("weight", "weight", now.weight())),
                () -> List.of(Written.of("weight", "weight", Entered.text(form.weight()))));
    }

    private static int weight(WeightForm form, Entered entered) {
        Integer weight = entered.whole("weight", "how many times", form.weight(), ProjectLimits.WEIGHT);
        if (weight == null && !entered.errors().hasFieldErrors("weight")) {
            entered.refuse("weight", "Write how many times as a whole number from 1 to 5.");
        }
        if (weight != null && weight > 1) {
            entered.given("weightReason", "the reason", form.weightReason(), ProjectLimits.LONGEST_TEXT);
        }
        return weight == null ? 1 : weight;
    }

    private ProjectCourse.Course opened(UUID projectId, May act, Model model) {
        access.require(projectId, act);
        ProjectCourse.Course now = course.course(projectId);
        model.addAttribute("course", now);
        model.addAttribute(
                "standings",
                java.util.Arrays.stream(Standing.values())
                        .filter(each -> each != now.standing())
                        .map(each -> new Option(each.name(), each == Standing.OPEN ? "Goes on" : each.words()))
                        .toList());
        return now;
    }

    private static Editing.Posted posted(
            UUID projectId,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next,
            String page) {
        return new Editing.Posted(projectId, errors, model, response, next, page, "/projects/" + projectId);
    }

    private static Saving.Theirs theirs(UUID projectId, String suffix, ProjectCourse.Course now, Written... fields) {
        return new Saving.Theirs("this project", "/projects/" + projectId + suffix, now.version(), List.of(fields));
    }
}
