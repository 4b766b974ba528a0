package org.plumbrow.project.edit;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.plumbrow.account.BranchPeople;
import org.plumbrow.account.PersonCard;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.project.NewProject;
import org.plumbrow.project.ProjectRegister;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Option;
import org.plumbrow.web.Role;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A contract came in: the project begins. */
@Controller
class NewPage {

    private final ProjectRegister register;
    private final BranchSettings settings;
    private final BranchPeople people;
    private final Access access;

    NewPage(ProjectRegister register, BranchSettings settings, BranchPeople people, Access access) {
        this.register = register;
        this.settings = settings;
        this.people = people;
        this.access = access;
    }

    /** @param kwDc of a job that was only thought of so far, as text for the field */
    @GetMapping("/projects/new")
    String show(
            @RequestParam(name = "kwDc", defaultValue = "") String kwDc,
            @RequestParam(name = "mounting", defaultValue = "") String mounting,
            Model model) {
        BranchCard branch = access.require(May.EDIT_PROJECT);
        model.addAttribute("form", NewForm.blank(access.visitor().personId().toString(), kwDc, mounting));
        choices(branch.id(), model);
        return "project/new";
    }

    @PostMapping("/projects/new")
    String open(
            @ModelAttribute("form") NewForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        BranchCard branch = access.require(May.EDIT_PROJECT);
        SiteChoices choices = choices(branch.id(), model);
        NewProject begun = form.read(
                new Entered(errors),
                choices,
                people.of(branch.id()),
                access.visitor().name());
        if (errors.hasErrors()) {
            response.setStatus(422);
            return "project/new";
        }
        UUID id = register.open(branch.id(), begun);
        Flash.done(next, "The project is open. What the gate to signed asks for stands below.");
        return "redirect:/projects/" + id;
    }

    private SiteChoices choices(UUID branchId, Model model) {
        SiteChoices choices = SiteChoices.of(settings.utilities(branchId), settings.permitOffices(branchId), null);
        List<Option> managers = new ArrayList<>(List.of(new Option("", "nobody yet")));
        for (PersonCard card : people.of(branchId)) {
            if (card.roles().contains(Role.PROJECT_MANAGER) || card.roles().contains(Role.MANAGER)) {
                managers.add(new Option(card.id().toString(), card.name()));
            }
        }
        model.addAttribute("choices", choices);
        model.addAttribute("managers", managers);
        model.addAttribute("mountings", ContractForm.mountings());
        return choices;
    }
}
