package org.plumbrow.branch.days;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.UUID;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchFacts.OwnClosedDay;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.Saving;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.web.Access;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** When the branch works: days, hours, holidays. */
@Controller
class DaysPage {

    private static final String HERE = "/settings/days";

    private final BranchSettings settings;
    private final DaysEditing editing;
    private final ClosedDays closedDays;
    private final Access access;
    private final Words words;
    private final Saving saving;

    DaysPage(
            BranchSettings settings,
            DaysEditing editing,
            ClosedDays closedDays,
            Access access,
            Words words,
            Saving saving) {
        this.settings = settings;
        this.editing = editing;
        this.closedDays = closedDays;
        this.access = access;
        this.words = words;
        this.saving = saving;
    }

    @GetMapping(HERE)
    String show(Model model) {
        BranchFacts branch = settings.facts(access.require(May.CHANGE_SETTINGS).id());
        model.addAttribute("daysForm", DaysForm.of(branch));
        model.addAttribute("closedDayForm", ClosedDayForm.EMPTY);
        return page(branch, model);
    }

    @PostMapping(HERE)
    String save(
            @Valid @ModelAttribute("daysForm") DaysForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        model.addAttribute("closedDayForm", ClosedDayForm.EMPTY);
        return saving.of(errors, response, () -> page(settings.facts(branchId), model))
                .make(
                        () -> {
                            var wrong = form.outOfOrder();
                            if (wrong.isEmpty()) {
                                editing.change(branchId, form.version(), form.terms());
                            }
                            return wrong;
                        },
                        () -> done(next, "Working days and hours saved. The plan is computed anew with them."),
                        model,
                        () -> form.terms().written(),
                        () -> theirs(settings.facts(branchId)));
    }

    @PostMapping(HERE + "/closed")
    String close(
            @Valid @ModelAttribute("closedDayForm") ClosedDayForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        return saving.of(errors, response, () -> {
                    BranchFacts branch = settings.facts(branchId);
                    model.addAttribute("daysForm", DaysForm.of(branch));
                    return page(branch, model);
                })
                .refusedAt("firstDay")
                .make(
                        () -> form.close(closedDays, ClosedDays.Whose.ofBranch(branchId)),
                        () -> done(next, "Closed: " + form.reason().strip() + "."));
    }

    @PostMapping(HERE + "/closed/{closedDayId}/reopen")
    String reopen(@PathVariable UUID closedDayId, RedirectAttributes next) {
        UUID branchId = closedDays.branchOf(closedDayId);
        OwnClosedDay day = closedDays.reopen(ClosedDays.Whose.ofBranch(branchId), closedDayId);
        Flash.doneWithUndo(
                next,
                DayWords.withYear(day.date()) + " is a working day again.",
                ComingClosed.closeAgain(HERE + "/closed", day));
        return "redirect:" + HERE;
    }

    private static String done(RedirectAttributes next, String sentence) {
        Flash.done(next, sentence);
        return "redirect:" + HERE;
    }

    private Saving.Theirs theirs(BranchFacts branch) {
        return new Saving.Theirs(
                "these working days",
                HERE,
                branch.calendarVersion(),
                DaysTerms.of(branch).written());
    }

    private String page(BranchFacts branch, Model model) {
        model.addAttribute("branchFacts", branch);
        model.addAttribute("weekdays", ComingClosed.weekdays());
        model.addAttribute("comingClosed", ComingClosed.of(branch.calendar(), branch.closedDays(), words.today()));
        return "branch/days";
    }
}
