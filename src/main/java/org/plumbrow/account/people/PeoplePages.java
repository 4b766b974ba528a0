package org.plumbrow.account.people;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Paging;
import org.plumbrow.web.Place;
import org.plumbrow.web.Refusal;
import org.springframework.context.annotation.Bean;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.support.ServletUriComponentsBuilder;

/** The people of a branch, for its managers: who is what, who is invited. */
@Controller
class PeoplePages {

    private static final int PLACE_ORDER = 70;

    private final Memberships memberships;
    private final Invitations invitations;
    private final Access access;

    PeoplePages(Memberships memberships, Invitations invitations, Access access) {
        this.memberships = memberships;
        this.invitations = invitations;
        this.access = access;
    }

    @Bean
    static Place peoplePlace() {
        return Place.underOwnName(PLACE_ORDER, "account.people.place", "/people", May.INVITE);
    }

    @GetMapping("/people")
    String people(Model model) {
        model.addAttribute("people", memberships.ofBranch());
        model.addAttribute("invitations", invitations.open());
        model.addAttribute("branch", access.branch());
        return "account/people";
    }

    @GetMapping("/people/firm")
    String firm(@RequestParam(name = "page", defaultValue = "1") int page, Model model) {
        Paging paging = Paging.of(page, memberships.peopleOfFirm());
        model.addAttribute("people", memberships.ofFirm(paging));
        model.addAttribute("page", paging);
        return "account/people-firm";
    }

    @GetMapping("/people/invite")
    String invite(Model model) {
        access.require(May.INVITE);
        model.addAttribute("form", InviteForm.empty());
        return inviteForm(model);
    }

    private String inviteForm(Model model) {
        model.addAttribute("options", BranchRole.options());
        model.addAttribute("branch", access.branch());
        return "account/invite";
    }

    @PostMapping("/people/invite")
    String sendInvitation(
            @Valid @ModelAttribute("form") InviteForm form,
            BindingResult errors,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response,
            RedirectAttributes next) {
        access.require(May.INVITE);
        if (!errors.hasErrors()) {
            invitations.refusal(form).ifPresent(refused -> refused.putAt(errors));
        }
        if (errors.hasErrors()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return inviteForm(model);
        }
        Invitations.Invited invited = invitations.invite(form);
        if (invited.link().isEmpty()) {
            Flash.done(next, invited.name() + " has an account already; the roles hold at once.");
            return "redirect:/people";
        }
        // shown this once, to the manager who made it: they may hand it over where no mail leaves
        model.addAttribute("name", invited.name());
        model.addAttribute(
                "link",
                ServletUriComponentsBuilder.fromContextPath(request)
                        .path(invited.link().get())
                        .toUriString());
        return "account/invited";
    }

    @PostMapping("/people/invitations/{invitationId}/withdraw")
    String withdraw(@PathVariable UUID invitationId, RedirectAttributes next) {
        invitations.withdraw(invitationId);
        Flash.done(next, "The invitation is withdrawn; its link opens nothing any more.");
        return "redirect:/people";
    }

    @GetMapping("/people/{personId}")
    String person(@PathVariable UUID personId, Model model) {
        Memberships.Member member = memberships.find(personId);
        model.addAttribute("form", RolesForm.of(member));
        return personPage(member, model);
    }

    private String personPage(Memberships.Member member, Model model) {
        model.addAttribute("member", member);
        model.addAttribute("options", BranchRole.options());
        model.addAttribute("branch", access.branch());
        model.addAttribute("self", member.id().equals(access.visitor().personId()));
        return "account/person";
    }

    @PostMapping("/people/{personId}/roles")
    String roles(
            @PathVariable UUID personId,
            @ModelAttribute("form") RolesForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Memberships.Member before = memberships.find(personId);
        Optional<Refusal> refused;
        try {
            refused = errors.hasErrors()
                    ? Optional.of(new Refusal("roles", "Choose among the roles of the page."))
                    : memberships.change(personId, form.wanted(), form.openedVersion());
        } catch (EditedMeanwhile newer) {
            response.setStatus(HttpStatus.CONFLICT.value());
            model.addAttribute("theirs", before);
            model.addAttribute("form", new RolesForm(form.wanted(), before.version()));
            return personPage(before, model);
        }
        if (refused.isPresent()) {
            refused.get().putAt(errors);
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return personPage(before, model);
        }
        Flash.doneWithUndo(
                next,
                before.name() + " is now: " + BranchRole.words(form.wanted()) + ".",
                undo(personId, before, form.openedVersion() + 1));
        return "redirect:/people/{personId}";
    }

    private static String undo(UUID personId, Memberships.Member before, long version) {
        String roles =
                before.roles().stream().map(role -> "&roles=" + role.name()).collect(Collectors.joining());
        return "/people/" + personId + "/roles?version=" + version + roles;
    }
}
