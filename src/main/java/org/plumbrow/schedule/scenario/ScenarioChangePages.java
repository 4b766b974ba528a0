package org.plumbrow.schedule.scenario;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.Saving;
import org.plumbrow.calc.duration.Mounting;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.Option;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** One thing more that is otherwise in a scenario: a short form that asks what its kind needs. */
@Controller
class ScenarioChangePages {

    private static final String NEW = "/look-ahead/scenarios/{scenarioId}/changes/new";

    private final Scenarios scenarios;
    private final ScenarioEditing editing;
    private final Words words;
    private final Saving saving;

    ScenarioChangePages(Scenarios scenarios, ScenarioEditing editing, Words words, Saving saving) {
        this.scenarios = scenarios;
        this.editing = editing;
        this.words = words;
        this.saving = saving;
    }

    @GetMapping(NEW)
    String blank(
            @PathVariable UUID scenarioId, @RequestParam(name = "kind", defaultValue = "") String kind, Model model) {
        Scenario scenario = scenarios.scenario(scenarioId);
        ScenarioKind chosen = ScenarioForm.kindOf(kind);
        model.addAttribute("change", ScenarioForm.blank(chosen, words.today()));
        return page(scenario, chosen, scenarios.choices(scenario.branchId()), model);
    }

    @PostMapping(NEW)
    String add(
            @PathVariable UUID scenarioId,
            @ModelAttribute("change") ScenarioForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Scenario scenario = scenarios.scenario(scenarioId);
        ScenarioChoices choices = scenarios.choices(scenario.branchId());
        Optional<ScenarioTerms> terms = form.read(new Entered(errors), choices, words.today());
        return saving.of(errors, response, () -> page(scenario, form.chosen(), choices, model))
                .make(() -> editing.addChange(scenarioId, terms.orElseThrow()), () -> {
                    Flash.done(next, "Planned with it. Nothing of it is in the plan yet.");
                    return "redirect:/look-ahead/scenarios/" + scenarioId;
                });
    }

    private static String page(Scenario scenario, ScenarioKind kind, ScenarioChoices choices, Model model) {
        model.addAttribute("stored", scenario);
        model.addAttribute("kind", kind);
        model.addAttribute("crews", first(of(choices.crews())));
        model.addAttribute("machines", first(of(choices.machines())));
        model.addAttribute("works", first(of(choices.works())));
        model.addAttribute(
                "mountings",
                first(Arrays.stream(Mounting.values())
                        .map(one -> new Option(one.name(), one.words()))
                        .toList()));
        return "schedule/scenario-change";
    }

    private static List<Option> of(Map<UUID, String> known) {
        return known.entrySet().stream()
                .map(one -> new Option(one.getKey().toString(), one.getValue()))
                .toList();
    }

    private static List<Option> first(List<Option> others) {
        List<Option> all = new ArrayList<>(List.of(new Option("", "choose")));
        all.addAll(others);
        return all;
    }
}
