package org.plumbrow.project.edit;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.duration.Milestone;
import org.plumbrow.project.NewProject;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectCourse;
import org.plumbrow.project.ProjectLimits;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.project.edit.CourseForms.PromiseForm;
import org.plumbrow.web.Access;
import org.plumbrow.web.ConstraintSentences;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Option;
import org.springframework.context.annotation.Bean;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What was promised, when and by whom; a new promise is added, none is overwritten. */
@Controller
class PromisesPage {

    private final ProjectCourse course;
    private final ProjectAccess projectAccess;
    private final Access access;
    private final ConstraintSentences constraints;
    private final Editing answers;

    PromisesPage(
            ProjectCourse course,
            ProjectAccess projectAccess,
            Access access,
            ConstraintSentences constraints,
            Editing answers) {
        this.course = course;
        this.projectAccess = projectAccess;
        this.access = access;
        this.constraints = constraints;
        this.answers = answers;
    }

    @Bean
    static ProjectPage promisesOfProject() {
        return new ProjectPage(50, "project.promises.page", "/promises", May.SEE_PROJECTS);
    }

    @ModelAttribute("milestones")
    List<Option> milestones() {
        return Arrays.stream(Milestone.values())
                .map(milestone -> new Option(milestone.name(), milestone.words()))
                .toList();
    }

    @GetMapping("/projects/{projectId}/promises")
    String show(@PathVariable UUID projectId, Model model) {
        String me = access.visitor().name();
        model.addAttribute("form", new PromiseForm(Milestone.SYSTEM_ON.name(), "", "0", me, ""));
        return page(projectId, model);
    }

    private String page(UUID projectId, Model model) {
        model.addAttribute("promises", course.promises(projectId));
        return answers.page(projectId, model, "project/promises");
    }

    @PostMapping("/projects/{projectId}/promises")
    String promise(
            @PathVariable UUID projectId,
            @ModelAttribute("form") PromiseForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        projectAccess.require(projectId, May.EDIT_PROJECT);
        NewProject.NewPromise made = read(form, new Entered(errors));
        if (made != null && !errors.hasErrors()) {
            try {
                course.promise(projectId, made);
                Flash.done(next, "The promise is written down. The plan is computed anew.");
                return "redirect:/projects/{projectId}/promises";
            } catch (DataIntegrityViolationException added) {
                constraints.refusal(added, "").putAt(errors);
            }
        }
        response.setStatus(422);
        return page(projectId, model);
    }

    private static NewProject.@Nullable NewPromise read(PromiseForm form, Entered entered) {
        Milestone milestone =
                entered.choice("milestone", Milestone.class, form.milestone()).orElse(Milestone.SYSTEM_ON);
        LocalDate date = entered.date("date", "the promised day", form.date());
        if (date == null && !entered.errors().hasFieldErrors("date")) {
            entered.refuse("date", "Choose the promised day.");
        }
        Integer tolerance =
                entered.whole("toleranceDays", "the tolerance", form.toleranceDays(), ProjectLimits.TOLERANCE_DAYS);
        String by = entered.given("promisedBy", "who promised it", form.promisedBy(), ProjectLimits.LONGEST_NAME);
        String reason = entered.within("reason", "the reason", form.reason(), ProjectLimits.LONGEST_TEXT);
        return date == null
                ? null
                : new NewProject.NewPromise(milestone, date, tolerance == null ? 0 : tolerance, by, reason);
    }
}
