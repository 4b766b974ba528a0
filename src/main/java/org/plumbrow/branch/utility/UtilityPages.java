package org.plumbrow.branch.utility;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.branch.days.ClosedDayForm;
import org.plumbrow.branch.days.ComingClosed;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Access;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The utilities of a branch, and the page of each. */
@Controller
class UtilityPages {

    static final String ALL = "/settings/utilities";
    static final String ONE = ALL + "/{utilityId}";

    private final BranchSettings settings;
    private final UtilityEditing editing;
    private final Access access;
    private final Words words;
    private final Saving saving;

    UtilityPages(BranchSettings settings, UtilityEditing editing, Access access, Words words, Saving saving) {
        this.settings = settings;
        this.editing = editing;
        this.access = access;
        this.words = words;
        this.saving = saving;
    }

    @GetMapping(ALL)
    String list(Model model) {
        List<UtilityFacts> utilities =
                settings.utilities(access.require(May.CHANGE_SETTINGS).id());
        model.addAttribute("utilities", utilities);
        return "branch/utilities";
    }

    @GetMapping(ALL + "/new")
    String blank(Model model) {
        access.require(May.CHANGE_SETTINGS);
        model.addAttribute("utilityForm", UtilityForm.NEW);
        return newPage(model);
    }

    @PostMapping(ALL + "/new")
    String add(
            @Valid @ModelAttribute("utilityForm") UtilityForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        UUID id = Ids.next();
        return saving.of(errors, response, () -> newPage(model))
                .refusedAt("name")
                .make(
                        () -> {
                            editing.add(id, branchId, form.terms());
                            return Optional.empty();
                        },
                        () -> {
                            Flash.done(next, form.name().strip() + " added. Add the hours in which it switches.");
                            return "redirect:" + ALL + "/" + id;
                        });
    }

    @GetMapping(ONE)
    String show(@PathVariable UUID utilityId, Model model) {
        UtilityFacts utility = of(utilityId);
        model.addAttribute("utilityForm", UtilityForm.of(utility));
        return page(utility, model);
    }

    @PostMapping(ONE)
    String change(
            @PathVariable UUID utilityId,
            @Valid @ModelAttribute("utilityForm") UtilityForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UtilityFacts utility = of(utilityId);
        long version = form == null || form.version() == null ? -1 : form.version();
        return saving.of(errors, response, () -> page(utility, model))
                .refusedAt("name")
                .make(
                        () -> {
                            editing.change(utility.branchId(), utilityId, version, form.terms());
                            return Optional.empty();
                        },
                        () -> {
                            Flash.done(next, "Saved.");
                            return "redirect:" + ALL + "/" + utilityId;
                        },
                        model,
                        () -> form.terms().written(),
                        () -> theirs(of(utilityId)));
    }

    private static Saving.Theirs theirs(UtilityFacts utility) {
        return new Saving.Theirs(
                "this utility",
                ALL + "/" + utility.id(),
                utility.version(),
                UtilityTerms.of(utility).written());
    }

    @PostMapping(ONE + "/end")
    String end(@PathVariable UUID utilityId, RedirectAttributes next) {
        UtilityFacts utility = of(utilityId);
        editing.end(utility.branchId(), utilityId);
        Flash.doneWithUndo(
                next,
                utility.name() + " is no longer offered for new projects.",
                ALL + "/" + utilityId + "/take-up-again");
        return "redirect:" + ALL;
    }

    @PostMapping(ONE + "/take-up-again")
    String takeUpAgain(@PathVariable UUID utilityId, RedirectAttributes next) {
        UtilityFacts utility = of(utilityId);
        editing.takeUpAgain(utility.branchId(), utilityId);
        Flash.doneWithUndo(
                next, utility.name() + " is offered for new projects again.", ALL + "/" + utilityId + "/end");
        return "redirect:" + ALL;
    }

    private UtilityFacts of(UUID utilityId) {
        UtilityFacts found = settings.utility(utilityId).orElseThrow(NotFound::new);
        access.require(found.branchId(), May.CHANGE_SETTINGS);
        return found;
    }

    private static String newPage(Model model) {
        model.addAttribute("weekdays", ComingClosed.weekdays());
        return "branch/utility-new";
    }

    private String page(UtilityFacts utility, Model model) {
        model.addAttribute("slotForm", SlotForm.EMPTY);
        model.addAttribute("closedDayForm", ClosedDayForm.EMPTY);
        return UtilityHours.page(utility, words.today(), model);
    }
}
