package org.plumbrow.crew;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.plumbrow.branch.Saving;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
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

/** Who works in the branch and who is away: the list, and the page of each crew. */
@Controller
class CrewPages {

    static final String ALL = "/crews";
    static final String ONE = ALL + "/{crewId}";

    private final Crews crews;
    private final CrewEditing editing;
    private final CrewSheet sheet;
    private final Access access;
    private final Words words;
    private final Saving saving;

    CrewPages(Crews crews, CrewEditing editing, CrewSheet sheet, Access access, Words words, Saving saving) {
        this.crews = crews;
        this.editing = editing;
        this.sheet = sheet;
        this.access = access;
        this.words = words;
        this.saving = saving;
    }

    @GetMapping(ALL)
    String list(Model model) {
        BranchCard branch = access.require(May.SEE_CREWS);
        LocalDate today = words.today();
        List<CrewFacts> mine =
                crews.crews(branch.id(), today).stream().filter(sheet::mayOpen).toList();
        List<CrewFacts> going =
                mine.stream().filter(crew -> !crew.hasEndedBy(today)).toList();
        model.addAttribute("crews", going);
        model.addAttribute(
                "ended", mine.stream().filter(crew -> crew.hasEndedBy(today)).toList());
        model.addAttribute(
                "awayToday",
                going.stream().filter(crew -> crew.awayOn(today).isPresent()).count());
        model.addAttribute("today", today);
        model.addAttribute("crewPages", sheet.pages());
        model.addAttribute("mayChange", branch.may(May.CHANGE_SETTINGS));
        return "crew/crews";
    }

    @GetMapping(ALL + "/new")
    String blank(Model model) {
        BranchCard branch = access.require(May.CHANGE_SETTINGS);
        model.addAttribute("crewForm", CrewForm.startingOn(words.today()));
        return sheet.newPage(branch.id(), model);
    }

    @PostMapping(ALL + "/new")
    String add(
            @Valid @ModelAttribute("crewForm") CrewForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        UUID id = Ids.next();
        return saving.of(errors, response, () -> sheet.newPage(branchId, model))
                .refusedAt("name")
                .make(() -> editing.add(id, branchId, form.terms()), () -> {
                    Flash.done(next, form.name().strip() + " added. The plan is computed anew with it.");
                    return "redirect:" + ALL + "/" + id;
                });
    }

    @GetMapping(ONE)
    String show(@PathVariable UUID crewId, Model model) {
        CrewFacts crew = sheet.open(crewId);
        model.addAttribute("crewForm", CrewForm.of(crew));
        model.addAttribute("awayForm", AwayForm.EMPTY);
        return sheet.page(crew, model);
    }

    @PostMapping(ONE)
    String change(
            @PathVariable UUID crewId,
            @Valid @ModelAttribute("crewForm") CrewForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        CrewFacts crew = sheet.toChange(crewId);
        return saving.of(errors, response, () -> {
                    model.addAttribute("awayForm", AwayForm.EMPTY);
                    return sheet.page(crew, model);
                })
                .refusedAt("name")
                .make(
                        () -> editing.change(crewId, form.version() == null ? -1 : form.version(), form.terms()),
                        () -> {
                            Flash.done(next, "Saved. The plan is computed anew with it.");
                            return "redirect:" + ALL + "/" + crewId;
                        },
                        model,
                        () -> form.terms().written(sheet.leadName(crew.branchId(), form.leadPersonId())),
                        () -> sheet.theirs(crewId));
    }

    @PostMapping(ONE + "/away")
    String away(
            @PathVariable UUID crewId,
            @Valid @ModelAttribute("awayForm") AwayForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        CrewFacts crew = sheet.toChange(crewId);
        UUID id = Ids.next();
        return saving.of(errors, response, () -> {
                    model.addAttribute("crewForm", CrewForm.of(crew));
                    return sheet.page(crew, model);
                })
                .refusedAt("firstDay")
                .make(() -> editing.away(id, crewId, form.time()), () -> {
                    Flash.doneWithUndo(
                            next,
                            crew.name() + " is away " + form.time().words() + ".",
                            ALL + "/" + crewId + "/away/" + id + "/remove");
                    return "redirect:" + ALL + "/" + crewId;
                });
    }

    @PostMapping(ONE + "/away/{absenceId}/remove")
    String notAway(@PathVariable UUID crewId, @PathVariable UUID absenceId, RedirectAttributes next) {
        CrewFacts crew = sheet.toChange(crewId);
        AwayTime time = editing.notAway(crewId, absenceId);
        Flash.doneWithUndo(
                next,
                crew.name() + " is there again: " + time.words() + ".",
                AwayForm.enterAgain(ALL + "/" + crewId + "/away", time));
        return "redirect:" + ALL + "/" + crewId;
    }
}
