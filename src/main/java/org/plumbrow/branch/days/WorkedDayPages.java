package org.plumbrow.branch.days;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.LocalDate;
import java.util.UUID;
import org.plumbrow.branch.Saving;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.web.Access;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Words;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.util.UriComponentsBuilder;

/** Days off that crews work. */
@Controller
class WorkedDayPages {

    private static final String HERE = "/settings/days/worked";

    private final WorkedDays days;
    private final Access access;
    private final Words words;
    private final Saving saving;

    WorkedDayPages(WorkedDays days, Access access, Words words, Saving saving) {
        this.days = days;
        this.access = access;
        this.words = words;
        this.saving = saving;
    }

    @GetMapping(HERE)
    String show(Model model) {
        model.addAttribute("workedDayForm", WorkedDayForm.EMPTY);
        return page(access.require(May.CHANGE_SETTINGS).id(), model);
    }

    @PostMapping(HERE)
    String work(
            @Valid @ModelAttribute("workedDayForm") WorkedDayForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        return saving.of(errors, response, () -> page(branchId, model))
                .refusedAt("day")
                .make(() -> form.work(days, branchId, words.today()), () -> {
                    Flash.done(next, "Crews work on " + DayWords.withYear(form.day()) + ". The plan is computed anew.");
                    return "redirect:" + HERE;
                });
    }

    @PostMapping(HERE + "/off")
    String takeOff(
            @RequestParam(name = "day") @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate day,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        days.takeOff(branchId, day)
                .ifPresentOrElse(
                        why -> Flash.doneWithUndo(
                                next,
                                DayWords.withYear(day) + " is off again. The plan is computed anew.",
                                work(day, why)),
                        () -> Flash.done(next, DayWords.withYear(day) + " is off already."));
        return "redirect:" + HERE;
    }

    /** Where a POST has crews work on that day again. */
    private static String work(LocalDate day, String why) {
        return UriComponentsBuilder.fromPath(HERE)
                .queryParam("day", day)
                .queryParam("why", "{why}")
                .build(why)
                .toString();
    }

    private String page(UUID branchId, Model model) {
        model.addAttribute("worked", days.since(branchId, words.today()));
        return "branch/worked-days";
    }
}
