package org.plumbrow.branch.utility;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.LocalDate;
import java.util.UUID;
import org.plumbrow.branch.BranchFacts.OwnClosedDay;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.UtilityFacts;
import org.plumbrow.branch.UtilityFacts.Slot;
import org.plumbrow.branch.days.ClosedDayForm;
import org.plumbrow.branch.days.ClosedDays;
import org.plumbrow.branch.days.ComingClosed;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.web.Access;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What comes and goes one by one on a utility's page: the hours in which it switches, and its days off. */
@Controller
class UtilityHours {

    private final BranchSettings settings;
    private final UtilityEditing editing;
    private final ClosedDays closedDays;
    private final Access access;
    private final Words words;
    private final Saving saving;

    UtilityHours(
            BranchSettings settings,
            UtilityEditing editing,
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

    @PostMapping(UtilityPages.ONE + "/slots")
    String addSlot(
            @PathVariable UUID utilityId,
            @Valid @ModelAttribute("slotForm") SlotForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UtilityFacts utility = of(utilityId);
        return saving.of(errors, response, () -> {
                    model.addAttribute("closedDayForm", ClosedDayForm.EMPTY);
                    return again(utility, model);
                })
                .refusedAt("from")
                .make(
                        () -> {
                            var wrong = form.outOfOrder();
                            if (wrong.isEmpty()) {
                                editing.addSlot(utility.branchId(), utilityId, form.from(), form.to(), form.backBy());
                            }
                            return wrong;
                        },
                        () -> back(utilityId, next, "Hours added."));
    }

    @PostMapping(UtilityPages.ONE + "/slots/{slotId}/remove")
    String removeSlot(@PathVariable UUID utilityId, @PathVariable UUID slotId, RedirectAttributes next) {
        UtilityFacts utility = of(utilityId);
        Slot slot = editing.removeSlot(utility.branchId(), utilityId, slotId);
        Flash.doneWithUndo(
                next,
                "Hours removed: " + slot.words() + ".",
                address(utilityId) + "/slots?from=" + slot.from() + "&to=" + slot.to()
                        + slot.backBy().map(time -> "&backBy=" + time).orElse(""));
        return "redirect:" + address(utilityId);
    }

    @PostMapping(UtilityPages.ONE + "/closed")
    String close(
            @PathVariable UUID utilityId,
            @Valid @ModelAttribute("closedDayForm") ClosedDayForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UtilityFacts utility = of(utilityId);
        return saving.of(errors, response, () -> {
                    model.addAttribute("slotForm", SlotForm.EMPTY);
                    return again(utility, model);
                })
                .refusedAt("firstDay")
                .make(
                        () -> form.close(closedDays, whose(utility)),
                        () -> back(utilityId, next, "Closed: " + form.reason().strip() + "."));
    }

    @PostMapping(UtilityPages.ONE + "/closed/{utilityClosedDayId}/reopen")
    String reopen(@PathVariable UUID utilityId, @PathVariable UUID utilityClosedDayId, RedirectAttributes next) {
        OwnClosedDay day = closedDays.reopen(whose(of(utilityId)), utilityClosedDayId);
        Flash.doneWithUndo(
                next,
                DayWords.withYear(day.date()) + " is a working day of the utility again.",
                ComingClosed.closeAgain(address(utilityId) + "/closed", day));
        return "redirect:" + address(utilityId);
    }

    private UtilityFacts of(UUID utilityId) {
        UtilityFacts found = settings.utility(utilityId).orElseThrow(NotFound::new);
        access.require(found.branchId(), May.CHANGE_SETTINGS);
        return found;
    }

    private static ClosedDays.Whose whose(UtilityFacts utility) {
        return new ClosedDays.Whose(utility.branchId(), utility.id(), UtilityEditing.thing(utility.name()));
    }

    private static String back(UUID utilityId, RedirectAttributes next, String sentence) {
        Flash.done(next, sentence);
        return "redirect:" + address(utilityId);
    }

    private static String address(UUID utilityId) {
        return UtilityPages.ALL + "/" + utilityId;
    }

    private String again(UtilityFacts utility, Model model) {
        model.addAttribute("utilityForm", UtilityForm.of(utility));
        return page(utility, words.today(), model);
    }

    static String page(UtilityFacts utility, LocalDate today, Model model) {
        model.addAttribute("utility", utility);
        model.addAttribute("weekdays", ComingClosed.weekdays());
        model.addAttribute("comingClosed", ComingClosed.of(utility.calendar(), utility.closedDays(), today));
        return "branch/utility";
    }
}
