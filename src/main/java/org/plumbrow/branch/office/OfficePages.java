package org.plumbrow.branch.office;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Arrays;
import java.util.UUID;
import java.util.stream.Stream;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.PermitOfficeFacts;
import org.plumbrow.branch.PermitOfficeFacts.CodeEdition;
import org.plumbrow.branch.Saving;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Access;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Option;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The permit offices of a branch, and the page of each. */
@Controller
class OfficePages {

    private static final String ALL = "/settings/permit-offices";
    private static final String ONE = ALL + "/{officeId}";

    private final BranchSettings settings;
    private final OfficeEditing editing;
    private final Access access;
    private final Saving saving;

    OfficePages(BranchSettings settings, OfficeEditing editing, Access access, Saving saving) {
        this.settings = settings;
        this.editing = editing;
        this.access = access;
        this.saving = saving;
    }

    @GetMapping(ALL)
    String list(Model model) {
        model.addAttribute(
                "offices",
                settings.permitOffices(access.require(May.CHANGE_SETTINGS).id()));
        return "branch/permit-offices";
    }

    @GetMapping(ALL + "/new")
    String blank(Model model) {
        access.require(May.CHANGE_SETTINGS);
        model.addAttribute("officeForm", OfficeForm.NEW);
        return page("branch/permit-office-new", model);
    }

    @PostMapping(ALL + "/new")
    String add(
            @Valid @ModelAttribute("officeForm") OfficeForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        return saving.of(errors, response, () -> page("branch/permit-office-new", model))
                .refusedAt("name")
                .make(
                        () -> {
                            var wrong = form.wrong();
                            if (wrong.isEmpty()) {
                                editing.add(Ids.next(), branchId, form.terms());
                            }
                            return wrong;
                        },
                        () -> done(next, form.name().strip() + " added."));
    }

    @GetMapping(ONE)
    String show(@PathVariable UUID officeId, Model model) {
        PermitOfficeFacts office = of(officeId);
        model.addAttribute("officeForm", OfficeForm.of(office));
        return page(office, model);
    }

    @PostMapping(ONE)
    String change(
            @PathVariable UUID officeId,
            @Valid @ModelAttribute("officeForm") OfficeForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        PermitOfficeFacts office = of(officeId);
        return saving.of(errors, response, () -> page(office, model))
                .refusedAt("name")
                .make(
                        () -> {
                            var wrong = form.wrong();
                            if (wrong.isEmpty()) {
                                long version = form.version() == null ? -1 : form.version();
                                editing.change(office.branchId(), officeId, version, form.terms());
                            }
                            return wrong;
                        },
                        () -> done(next, form.name().strip() + " saved."),
                        model,
                        () -> form.terms().written(),
                        () -> theirs(of(officeId)));
    }

    private static Saving.Theirs theirs(PermitOfficeFacts office) {
        return new Saving.Theirs(
                "this permit office",
                ALL + "/" + office.id(),
                office.version(),
                OfficeTerms.of(office).written());
    }

    @PostMapping(ONE + "/end")
    String end(@PathVariable UUID officeId, RedirectAttributes next) {
        PermitOfficeFacts office = of(officeId);
        editing.end(office.branchId(), officeId);
        Flash.doneWithUndo(
                next,
                office.name() + " is no longer offered for new projects.",
                ALL + "/" + officeId + "/take-up-again");
        return "redirect:" + ALL;
    }

    @PostMapping(ONE + "/take-up-again")
    String takeUpAgain(@PathVariable UUID officeId, RedirectAttributes next) {
        PermitOfficeFacts office = of(officeId);
        editing.takeUpAgain(office.branchId(), officeId);
        Flash.doneWithUndo(next, office.name() + " is offered for new projects again.", ALL + "/" + officeId + "/end");
        return "redirect:" + ALL;
    }

    private PermitOfficeFacts of(UUID officeId) {
        PermitOfficeFacts found = settings.permitOffice(officeId).orElseThrow(NotFound::new);
        access.require(found.branchId(), May.CHANGE_SETTINGS);
        return found;
    }

    private static String done(RedirectAttributes next, String sentence) {
        Flash.done(next, sentence);
        return "redirect:" + ALL;
    }

    private static String page(PermitOfficeFacts office, Model model) {
        model.addAttribute("office", office);
        return page("branch/permit-office", model);
    }

    private static String page(String view, Model model) {
        model.addAttribute(
                "editions",
                Stream.concat(
                                Stream.of(new Option("", "Choose one")),
                                Arrays.stream(CodeEdition.values())
                                        .map(edition -> new Option(edition.name(), edition.words())))
                        .toList());
        return view;
    }
}
