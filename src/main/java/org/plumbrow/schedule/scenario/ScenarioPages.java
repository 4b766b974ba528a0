package org.plumbrow.schedule.scenario;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
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

/** Scenarios side by side, and the page of each. */
@Controller
class ScenarioPages {

    private static final String ALL = "/look-ahead/scenarios";
    private static final String ONE = ALL + "/{scenarioId}";

    private final Scenarios scenarios;
    private final ScenarioEditing editing;
    private final Access access;
    private final Words words;
    private final Saving saving;

    ScenarioPages(Scenarios scenarios, ScenarioEditing editing, Access access, Words words, Saving saving) {
        this.scenarios = scenarios;
        this.editing = editing;
        this.access = access;
        this.words = words;
        this.saving = saving;
    }

    @GetMapping(ALL)
    String list(Model model) {
        model.addAttribute("shown", scenarios.all());
        return "schedule/scenarios";
    }

    @GetMapping(ALL + "/new")
    String blank(Model model) {
        model.addAttribute(
                "scenario", new ScenarioForm("", "", "", "", words.today().toString(), "5", "", "", ""));
        return newPage(scenarios.choices(), model);
    }

    @PostMapping(ALL + "/new")
    String add(
            @ModelAttribute("scenario") ScenarioForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_PLAN).id();
        ScenarioChoices choices = scenarios.choices();
        Optional<ScenarioTerms> terms = form.read(new Entered(errors), choices, words.today());
        UUID id = Ids.next();
        return saving.of(errors, response, () -> newPage(choices, model))
                .refusedAt("name")
                .make(() -> editing.add(id, branchId, terms.orElseThrow()), () -> {
                    Flash.done(next, "Planned. Nothing of it is in the plan yet.");
                    return "redirect:" + ALL + "/" + id;
                });
    }

    @GetMapping(ONE)
    String show(@PathVariable UUID scenarioId, Model model) {
        Scenarios.Shown shown = scenarios.of(scenarioId);
        model.addAttribute("scenario", ScenarioForm.of(shown.scenarios().get(0)));
        return page(shown, model);
    }

    @PostMapping(ONE)
    String change(
            @PathVariable UUID scenarioId,
            @ModelAttribute("scenario") ScenarioForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Scenarios.Shown shown = scenarios.of(scenarioId);
        Optional<ScenarioTerms> terms = form.read(new Entered(errors), shown.choices(), words.today());
        return saving.of(errors, response, () -> page(shown, model))
                .refusedAt("name")
                .make(
                        () -> editing.change(scenarioId, Entered.version(form.version()), terms.orElseThrow()),
                        () -> {
                            Flash.done(next, "Saved and planned anew.");
                            return "redirect:" + ALL + "/" + scenarioId;
                        },
                        model,
                        () -> written(terms, shown.choices()),
                        () -> theirs(scenarioId, shown.choices()));
    }

    private static List<Written> written(Optional<ScenarioTerms> terms, ScenarioChoices choices) {
        return terms.map(mine -> mine.written(choices)).orElse(List.of());
    }

    private Saving.Theirs theirs(UUID scenarioId, ScenarioChoices choices) {
        Scenario now = scenarios.scenario(scenarioId);
        return new Saving.Theirs(
                "this scenario",
                ALL + "/" + scenarioId,
                now.version(),
                now.terms().written(choices));
    }

    @PostMapping(ONE + "/accept")
    String accept(
            @PathVariable UUID scenarioId,
            @ModelAttribute("act") ScenarioAct act,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        scenarios.scenario(scenarioId);
        try {
            return saving.of(errors, response, () -> again(scenarioId, model))
                    .make(() -> editing.accept(scenarioId, act.seen()), () -> {
                        Flash.done(
                                next, "Recorded. The plan is computed anew with it; look at the draft and publish it.");
                        return "redirect:/look-ahead";
                    });
        } catch (EditedMeanwhile newer) {
            return overNewer(scenarioId, model, response);
        }
    }

    @PostMapping(ONE + "/throw-away")
    String throwAway(
            @PathVariable UUID scenarioId,
            @ModelAttribute("act") ScenarioAct act,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        try {
            editing.throwAway(scenarioId, act.seen());
        } catch (EditedMeanwhile newer) {
            return overNewer(scenarioId, model, response);
        }
        Flash.done(next, "The scenario is gone. The plan stands as it was.");
        return "redirect:" + ALL;
    }

    /** It stands on the page as it is by now, to be decided on knowingly. */
    private String overNewer(UUID scenarioId, Model model, HttpServletResponse response) {
        response.setStatus(409);
        model.addAttribute("newer", Boolean.TRUE);
        return again(scenarioId, model);
    }

    private String again(UUID scenarioId, Model model) {
        Scenarios.Shown shown = scenarios.of(scenarioId);
        model.addAttribute("scenario", ScenarioForm.of(shown.scenarios().get(0)));
        return page(shown, model);
    }

    private String page(Scenarios.Shown shown, Model model) {
        model.addAttribute("shown", shown);
        model.addAttribute("then", shown.compared().get(1));
        model.addAttribute("stored", shown.scenarios().get(0));
        if (!model.containsAttribute("act")) {
            model.addAttribute("act", new ScenarioAct(""));
        }
        options(shown.choices(), model);
        return "schedule/scenario";
    }

    private static String newPage(ScenarioChoices choices, Model model) {
        options(choices, model);
        return "schedule/scenario-new";
    }

    private static void options(ScenarioChoices choices, Model model) {
        model.addAttribute(
                "kinds",
                first(
                        "choose",
                        Arrays.stream(ScenarioKind.values())
                                .map(kind -> new Option(kind.name(), kind.words()))
                                .toList()));
        model.addAttribute("crews", first("none", of(choices.crews())));
        model.addAttribute("machines", first("none", of(choices.machines())));
        model.addAttribute(
                "mountings",
                first(
                        "none",
                        Arrays.stream(Mounting.values())
                                .map(one -> new Option(one.name(), one.words()))
                                .toList()));
    }

    private static List<Option> of(Map<UUID, String> known) {
        return known.entrySet().stream()
                .map(one -> new Option(one.getKey().toString(), one.getValue()))
                .toList();
    }

    private static List<Option> first(String empty, List<Option> others) {
        List<Option> all = new ArrayList<>(List.of(new Option("", empty)));
        all.addAll(others);
        return all;
    }
}
