package org.plumbrow.project.edit;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.Written;
import org.plumbrow.project.PartFields;
import org.plumbrow.project.ProjectEditing;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Entered;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Where the project is built. */
@Controller
class SitePage {

    private final ProjectEditing editing;
    private final Projects projects;
    private final BranchSettings settings;
    private final Editing answers;

    SitePage(ProjectEditing editing, Projects projects, BranchSettings settings, Editing answers) {
        this.editing = editing;
        this.projects = projects;
        this.settings = settings;
        this.answers = answers;
    }

    @GetMapping("/projects/{projectId}/site")
    String show(@PathVariable UUID projectId, Model model) {
        ProjectEditing.Part<ProjectFacts.Site> part = editing.site(projectId);
        SiteChoices choices = choices(projectId, part.facts());
        model.addAttribute("choices", choices);
        model.addAttribute("form", SiteForm.of(Values.of(written(part.facts(), choices)), part.version()));
        return answers.page(projectId, model, "project/site");
    }

    @PostMapping("/projects/{projectId}/site")
    String correct(
            @PathVariable UUID projectId,
            @ModelAttribute("form") SiteForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        ProjectEditing.Part<ProjectFacts.Site> part = editing.site(projectId);
        SiteChoices choices = choices(projectId, part.facts());
        model.addAttribute("choices", choices);
        String address = "/projects/" + projectId + "/site";
        return answers.answer(
                new Editing.Posted(projectId, errors, model, response, next, "project/site", "/projects/" + projectId),
                () -> form.read(new Entered(errors), choices),
                to -> editing.correctSite(projectId, Entered.version(form.version()), to),
                () -> new Saving.Theirs("the site", address, part.version(), written(part.facts(), choices)),
                () -> form.written(written(part.facts(), choices), choices));
    }

    private SiteChoices choices(UUID projectId, ProjectFacts.@Nullable Site now) {
        UUID branchId = projects.facts(projectId).branchId();
        return SiteChoices.of(settings.utilities(branchId), settings.permitOffices(branchId), now);
    }

    private static List<Written> written(ProjectFacts.Site site, SiteChoices choices) {
        return PartFields.site(site, id -> choices.words(id.toString()).orElse(""));
    }
}
