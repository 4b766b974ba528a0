package org.plumbrow.project.edit;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.account.BranchPeople;
import org.plumbrow.account.PersonCard;
import org.plumbrow.branch.Saving;
import org.plumbrow.project.Duty;
import org.plumbrow.project.PartFields;
import org.plumbrow.project.ProjectEditing;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
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

/** Who acts for what on a project. */
@Controller("projectPeoplePage")
class PeoplePage {

    private final ProjectEditing editing;
    private final Projects projects;
    private final BranchPeople people;
    private final Editing answers;

    PeoplePage(ProjectEditing editing, Projects projects, BranchPeople people, Editing answers) {
        this.editing = editing;
        this.projects = projects;
        this.people = people;
        this.answers = answers;
    }

    @GetMapping("/projects/{projectId}/people")
    String show(@PathVariable UUID projectId, Model model) {
        ProjectEditing.Part<Map<Duty, ProjectFacts.InCharge>> part = editing.people(projectId);
        choices(projectId, part.facts(), model);
        model.addAttribute("form", PeopleForm.of(Values.of(PartFields.people(part.facts())), part.version()));
        return answers.page(projectId, model, "project/people");
    }

    @PostMapping("/projects/{projectId}/people")
    String assign(
            @PathVariable UUID projectId,
            @ModelAttribute("form") PeopleForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        ProjectEditing.Part<Map<Duty, ProjectFacts.InCharge>> part = editing.people(projectId);
        List<PersonCard> branch = choices(projectId, part.facts(), model);
        Map<UUID, String> names = branch.stream().collect(Collectors.toMap(PersonCard::id, PersonCard::name));
        String address = "/projects/" + projectId + "/people";
        return answers.answer(
                new Editing.Posted(
                        projectId, errors, model, response, next, "project/people", "/projects/" + projectId),
                () -> form.read(new Entered(errors), branch, part.facts()),
                to -> editing.assign(projectId, Entered.version(form.version()), to),
                () -> new Saving.Theirs("the people", address, part.version(), PartFields.people(part.facts())),
                () -> form.written(names));
    }

    private List<PersonCard> choices(UUID projectId, Map<Duty, ProjectFacts.InCharge> now, Model model) {
        List<PersonCard> branch = people.of(projects.facts(projectId).branchId());
        List<Option> options = new ArrayList<>(List.of(new Option("", "–")));
        branch.forEach(card -> options.add(new Option(card.id().toString(), card.name())));
        now.values().stream()
                .filter(who -> who.personId() != null
                        && options.stream()
                                .noneMatch(o -> o.value().equals(who.personId().toString())))
                .forEach(gone -> options.add(new Option(String.valueOf(gone.personId()), gone.name())));
        model.addAttribute("people", options);
        model.addAttribute(
                "dutyWords", Arrays.stream(Duty.values()).map(Duty::words).toList());
        return branch;
    }
}
