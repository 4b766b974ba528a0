package org.plumbrow.project.gate.page;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.plumbrow.branch.Saving;
import org.plumbrow.project.Duty;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.AnswerKind;
import org.plumbrow.project.gate.Condition;
import org.plumbrow.project.gate.GateChecklists;
import org.plumbrow.project.gate.TemplateItem;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Option;
import org.plumbrow.web.Place;
import org.plumbrow.web.Refusal;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The checklists of a branch: what each gate asks, and a page for each item. */
@Controller
class TemplatePages {

    private static final int PLACE_ORDER = 20;
    private static final String ALL = "/settings/gates";

    private final GateChecklists checklists;
    private final Saving saving;

    TemplatePages(GateChecklists checklists, Saving saving) {
        this.checklists = checklists;
        this.saving = saving;
    }

    @Bean
    static Place gatesPlace() {
        return Place.underOwnName(PLACE_ORDER, "gate.settings.place", ALL, May.CHANGE_SETTINGS);
    }

    /** The checklist of one gate. */
    record Checklist(Stage stage, String path, List<TemplateItem> items) {}

    @GetMapping(ALL)
    String all(Model model) {
        List<TemplateItem> items = checklists.all();
        model.addAttribute(
                "lists",
                Arrays.stream(Stage.values())
                        .map(stage -> new Checklist(
                                stage,
                                GatePages.path(stage),
                                items.stream()
                                        .filter(item -> item.asked().stage() == stage)
                                        .toList()))
                        .toList());
        model.addAttribute("count", items.size());
        model.addAttribute(
                "changed", items.stream().filter(TemplateItem::changed).count());
        return "gate/checklists";
    }

    @GetMapping(ALL + "/items/{gateItem}")
    String one(@PathVariable String gateItem, Model model) {
        TemplateItem item = checklists.one(gateItem);
        model.addAttribute("templateForm", TemplateForm.of(item));
        return page(item, model);
    }

    private static String page(TemplateItem item, Model model) {
        model.addAttribute("item", item);
        return "gate/checklist-item";
    }

    @PostMapping(ALL + "/items/{gateItem}")
    String change(
            @PathVariable String gateItem,
            @Valid @ModelAttribute("templateForm") TemplateForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        TemplateItem item = checklists.one(gateItem);
        return saving.of(errors, response, () -> page(item, model))
                .make(
                        () -> checklists.change(gateItem, form.choice(), form.seen()),
                        () -> done(
                                next,
                                "Saved: " + form.choice().words()
                                        + ". What was answered already keeps what was asked then."),
                        model,
                        form::written,
                        () -> theirs(gateItem));
    }

    private Saving.Theirs theirs(String code) {
        TemplateItem now = checklists.one(code);
        return new Saving.Theirs(
                "this item",
                ALL + "/items/" + code,
                now.version(),
                TemplateForm.of(now).written());
    }

    @GetMapping(ALL + "/{gateStage}/new")
    String askToAdd(@PathVariable String gateStage, Model model) {
        checklists.all();
        model.addAttribute("templateForm", TemplateForm.empty());
        return addPage(GatePages.stage(gateStage), model);
    }

    private static String addPage(Stage stage, Model model) {
        model.addAttribute("stage", stage);
        model.addAttribute("path", GatePages.path(stage));
        model.addAttribute(
                "kindOptions",
                Arrays.stream(AnswerKind.values())
                        .filter(kind -> kind != AnswerKind.COMPUTED)
                        .map(kind -> new Option(kind.name(), kind.words()))
                        .toList());
        model.addAttribute(
                "siteOptions",
                Arrays.stream(Condition.Site.values())
                        .map(site -> new Option(site.name(), site.words()))
                        .toList());
        model.addAttribute(
                "duties",
                Arrays.stream(Duty.values())
                        .map(duty -> new Option(duty.name(), duty.words()))
                        .toList());
        return "gate/checklist-new";
    }

    @PostMapping(ALL + "/{gateStage}/new")
    String add(
            @PathVariable String gateStage,
            @Valid @ModelAttribute("templateForm") TemplateForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Stage stage = GatePages.stage(gateStage);
        checklists.all();
        return saving.of(errors, response, () -> addPage(stage, model))
                .refusedAt("words")
                .make(
                        () -> added(stage, form),
                        () -> done(
                                next,
                                "Added to the gate to " + stage.words().toLowerCase(java.util.Locale.ROOT) + ": "
                                        + form.choice().words() + "."));
    }

    private Optional<Refusal> added(Stage stage, TemplateForm form) {
        Optional<Duty> duty = form.chosenDuty();
        return duty.isEmpty()
                ? Optional.of(new Refusal("duty", "Choose who acts on it."))
                : checklists.add(stage, form.chosenKinds(), form.chosenSites(), duty.get(), form.choice());
    }

    private static String done(RedirectAttributes next, String sentence) {
        Flash.done(next, sentence);
        return "redirect:" + ALL;
    }
}
