package org.plumbrow.crew;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.plumbrow.branch.Saving;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Option;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The machines that crews share: the list, and the page of each. */
@Controller
class EquipmentPages {

    private static final String ALL = CrewPages.ALL + "/equipment";
    private static final String ONE = ALL + "/{equipmentId}";
    private static final List<AwayReason> REASONS = List.of(AwayReason.REPAIR, AwayReason.LENT_OUT, AwayReason.OTHER);

    private final Crews crews;
    private final EquipmentEditing editing;
    private final Access access;
    private final Words words;
    private final Saving saving;

    EquipmentPages(Crews crews, EquipmentEditing editing, Access access, Words words, Saving saving) {
        this.crews = crews;
        this.editing = editing;
        this.access = access;
        this.words = words;
        this.saving = saving;
    }

    @GetMapping(ALL)
    String list(Model model) {
        BranchCard branch = access.require(May.SEE_CREWS);
        LocalDate today = words.today();
        List<EquipmentFacts> all = crews.equipment(branch.id(), today);
        List<EquipmentFacts> kept =
                all.stream().filter(machine -> !machine.hasGoneBy(today)).toList();
        model.addAttribute("machines", kept);
        model.addAttribute(
                "gone", all.stream().filter(machine -> machine.hasGoneBy(today)).toList());
        model.addAttribute(
                "awayToday",
                kept.stream()
                        .filter(machine -> machine.awayOn(today).isPresent())
                        .count());
        model.addAttribute("today", today);
        model.addAttribute("mayChange", branch.may(May.CHANGE_SETTINGS));
        return "crew/equipment";
    }

    @GetMapping(ALL + "/new")
    String blank(Model model) {
        access.require(May.CHANGE_SETTINGS);
        model.addAttribute("equipmentForm", EquipmentForm.startingOn(words.today()));
        return newPage(model);
    }

    @PostMapping(ALL + "/new")
    String add(
            @Valid @ModelAttribute("equipmentForm") EquipmentForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        return saving.of(errors, response, () -> newPage(model))
                .refusedAt("name")
                .make(() -> editing.add(Ids.next(), branchId, form.terms()), () -> {
                    Flash.done(next, form.name().strip() + " added. The plan is computed anew with it.");
                    return "redirect:" + ALL;
                });
    }

    @GetMapping(ONE)
    String show(@PathVariable UUID equipmentId, Model model) {
        EquipmentFacts machine = machine(equipmentId, May.SEE_CREWS);
        model.addAttribute("equipmentForm", EquipmentForm.of(machine));
        model.addAttribute("awayForm", AwayForm.EMPTY);
        return page(machine, model);
    }

    @PostMapping(ONE)
    String change(
            @PathVariable UUID equipmentId,
            @Valid @ModelAttribute("equipmentForm") EquipmentForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        EquipmentFacts machine = machine(equipmentId, May.CHANGE_SETTINGS);
        return saving.of(errors, response, () -> {
                    model.addAttribute("awayForm", AwayForm.EMPTY);
                    return page(machine, model);
                })
                .refusedAt("name")
                .make(
                        () -> editing.change(equipmentId, form.version() == null ? -1 : form.version(), form.terms()),
                        () -> {
                            Flash.done(next, "Saved. The plan is computed anew with it.");
                            return "redirect:" + ALL + "/" + equipmentId;
                        },
                        model,
                        () -> form.terms().written(),
                        () -> theirs(machine(equipmentId, May.CHANGE_SETTINGS)));
    }

    private static Saving.Theirs theirs(EquipmentFacts machine) {
        return new Saving.Theirs(
                "this machine",
                ALL + "/" + machine.id(),
                machine.version(),
                EquipmentForm.of(machine).terms().written());
    }

    @PostMapping(ONE + "/away")
    String away(
            @PathVariable UUID equipmentId,
            @Valid @ModelAttribute("awayForm") AwayForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        EquipmentFacts machine = machine(equipmentId, May.CHANGE_SETTINGS);
        UUID id = Ids.next();
        return saving.of(errors, response, () -> {
                    model.addAttribute("equipmentForm", EquipmentForm.of(machine));
                    return page(machine, model);
                })
                .refusedAt("firstDay")
                .make(() -> editing.away(id, equipmentId, form.time()), () -> {
                    Flash.doneWithUndo(
                            next,
                            machine.name() + " is away " + form.time().words() + ".",
                            ALL + "/" + equipmentId + "/away/" + id + "/remove");
                    return "redirect:" + ALL + "/" + equipmentId;
                });
    }

    @PostMapping(ONE + "/away/{equipmentAbsenceId}/remove")
    String notAway(@PathVariable UUID equipmentId, @PathVariable UUID equipmentAbsenceId, RedirectAttributes next) {
        EquipmentFacts machine = machine(equipmentId, May.CHANGE_SETTINGS);
        AwayTime time = editing.notAway(equipmentId, equipmentAbsenceId);
        Flash.doneWithUndo(
                next,
                machine.name() + " is there again: " + time.words() + ".",
                AwayForm.enterAgain(ALL + "/" + equipmentId + "/away", time));
        return "redirect:" + ALL + "/" + equipmentId;
    }

    private EquipmentFacts machine(UUID equipmentId, May act) {
        EquipmentFacts machine = crews.machine(equipmentId).orElseThrow(NotFound::new);
        access.require(machine.branchId(), act);
        return machine;
    }

    private static String newPage(Model model) {
        model.addAttribute("kinds", kinds());
        return "crew/machine-new";
    }

    private static List<Option> kinds() {
        return Stream.concat(
                        Stream.of(new Option("", "Choose one")),
                        Arrays.stream(EquipmentKind.values()).map(kind -> new Option(kind.name(), kind.words())))
                .toList();
    }

    private String page(EquipmentFacts machine, Model model) {
        model.addAttribute("machine", machine);
        model.addAttribute("today", words.today());
        model.addAttribute("awayToday", machine.awayOn(words.today()).orElse(null));
        model.addAttribute("halves", AwayWords.halves());
        model.addAttribute("reasons", AwayWords.reasons(REASONS));
        model.addAttribute("kinds", kinds());
        model.addAttribute("mayChange", access.may(machine.branchId(), May.CHANGE_SETTINGS));
        return "crew/machine";
    }
}
