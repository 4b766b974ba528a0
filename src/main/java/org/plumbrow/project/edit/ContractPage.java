package org.plumbrow.project.edit;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.Written;
import org.plumbrow.project.PartFields;
import org.plumbrow.project.ProjectEditing;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Option;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What the contract fixes. One blank array stands behind the known ones: saving gives the next. */
@Controller
class ContractPage {

    private final ProjectEditing editing;
    private final Editing answers;

    ContractPage(ProjectEditing editing, Editing answers) {
        this.editing = editing;
        this.answers = answers;
    }

    @ModelAttribute("mountings")
    List<Option> mountings() {
        return ContractForm.mountings();
    }

    @GetMapping("/projects/{projectId}/contract")
    String show(@PathVariable UUID projectId, Model model) {
        ProjectEditing.Part<ProjectFacts.Contract> part = editing.contract(projectId);
        model.addAttribute(
                "form",
                ContractForm.of(Values.of(PartFields.contract(part.facts())), part.version())
                        .withABlankArray());
        return answers.page(projectId, model, "project/contract");
    }

    @PostMapping("/projects/{projectId}/contract")
    String correct(
            @PathVariable UUID projectId,
            @ModelAttribute("form") ContractForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        ProjectEditing.Part<ProjectFacts.Contract> part = editing.contract(projectId);
        List<Written> stored = PartFields.contract(part.facts());
        String address = "/projects/" + projectId + "/contract";
        return answers.answer(
                new Editing.Posted(
                        projectId, errors, model, response, next, "project/contract", "/projects/" + projectId),
                () -> form.read(new Entered(errors)),
                to -> editing.correctContract(projectId, Entered.version(form.version()), to),
                () -> new Saving.Theirs("the contract", address, part.version(), stored),
                form::written);
    }
}
