package org.plumbrow.schedule.scenario;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.Written;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
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
    private final Saving saving;

    ScenarioPages(Scenarios scenarios, ScenarioEditing editing, Access access, Saving saving) {
        this.scenarios = scenarios;
        this.editing = editing;
        this.access = access;
        this.saving = saving;
    }

    @GetMapping(ALL)
    String list(Model model) {
        model.addAttribute("shown", scenarios.all());
        return "schedule/scenarios";
    }

    @GetMapping(ALL + "/new")
    String blank(Model model) {
        access.require(May.CHANGE_PLAN);
        model.addAttribute("scenario", new ScenarioName("", ""));
        return "schedule/scenario-new";
    }

    @PostMapping(ALL + "/new")
    String add(
            @ModelAttribute("scenario") ScenarioName form,
            BindingResult errors,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_PLAN).id();
        String name = form.read(new Entered(errors));
        UUID id = Ids.next();
        return saving.of(errors, response, () -> "schedule/scenario-new")
                .refusedAt("name")
                .make(() -> editing.add(id, branchId, name), () -> {
                    Flash.done(next, "Begun. Now say what is otherwise in it; nothing of it is in the plan.");
                    return "redirect:" + ALL + "/" + id;
                });
    }

    @GetMapping(ONE)
    String show(@PathVariable UUID scenarioId, Model model) {
        return again(scenarioId, model);
    }

    @PostMapping(ONE)
    String rename(
            @PathVariable UUID scenarioId,
            @ModelAttribute("scenario") ScenarioName form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        scenarios.scenario(scenarioId);
        String name = form.read(new Entered(errors));
        return saving.of(errors, response, () -> page(scenarios.of(scenarioId), model))
                .refusedAt("name")
                .make(
                        () -> editing.rename(scenarioId, Entered.version(form.version()), name),
                        () -> {
                            Flash.done(next, "It is called " + name + " now.");
                            return "redirect:" + ALL + "/" + scenarioId;
                        },
                        model,
                        () -> List.of(Written.of("Name", "name", name)),
                        () -> theirs(scenarioId));
    }

    private Saving.Theirs theirs(UUID scenarioId) {
        Scenario now = scenarios.scenario(scenarioId);
        return new Saving.Theirs("this scenario", ALL + "/" + scenarioId, now.version(), now.written());
    }

    @PostMapping(ONE + "/accept")
    String accept(
            @PathVariable UUID scenarioId,
            @ModelAttribute("act") ScenarioAct act,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        boolean hasJobs = !scenarios.scenario(scenarioId).jobs().isEmpty();
        try {
            return saving.of(errors, response, () -> again(scenarioId, model))
                    .make(() -> editing.accept(scenarioId, act.seen()), () -> accepted(scenarioId, hasJobs, next));
        } catch (EditedMeanwhile newer) {
            return overNewer(scenarioId, model, response);
        }
    }

    private static String accepted(UUID scenarioId, boolean hasJobs, RedirectAttributes next) {
        Flash.done(
                next,
                "Recorded. The plan is computed anew with it; look at the draft and publish it."
                        + (hasJobs ? " The job stays here until its project is opened." : ""));
        return hasJobs ? "redirect:" + ALL + "/" + scenarioId : "redirect:/look-ahead";
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

    /** Takes one thing out again. */
    @PostMapping(ONE + "/changes/{changeId}/take-out")
    String takeOut(
            @PathVariable UUID scenarioId,
            @PathVariable UUID changeId,
            @ModelAttribute("act") ScenarioAct act,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        try {
            editing.takeOut(scenarioId, act.seen(), changeId);
        } catch (EditedMeanwhile newer) {
            return overNewer(scenarioId, model, response);
        }
        Flash.done(next, "Taken out, and planned anew.");
        return "redirect:" + ALL + "/" + scenarioId;
    }

    /** It stands on the page as it is by now, to be decided on knowingly. */
    private String overNewer(UUID scenarioId, Model model, HttpServletResponse response) {
        response.setStatus(409);
        model.addAttribute("newer", Boolean.TRUE);
        return again(scenarioId, model);
    }

    private String again(UUID scenarioId, Model model) {
        Scenarios.Shown shown = scenarios.of(scenarioId);
        Scenario stored = shown.scenarios().get(0);
        model.addAttribute("scenario", new ScenarioName(stored.name(), Long.toString(stored.version())));
        return page(shown, model);
    }

    private String page(Scenarios.Shown shown, Model model) {
        Scenario stored = shown.scenarios().get(0);
        model.addAttribute("shown", shown);
        model.addAttribute("then", shown.compared().get(1));
        model.addAttribute("stored", stored);
        model.addAttribute("notToAccept", stored.notToAccept().orElse(""));
        model.addAttribute("kinds", ScenarioKind.values());
        if (!model.containsAttribute("act")) {
            model.addAttribute("act", new ScenarioAct(""));
        }
        return "schedule/scenario";
    }
}
