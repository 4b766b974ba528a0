package org.plumbrow.project.gate.page;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import jakarta.validation.constraints.NotNull;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.project.gate.GatePassing;
import org.plumbrow.project.gate.GateView;
import org.plumbrow.project.gate.Gates;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Option;
import org.plumbrow.web.Refusal;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Passing a gate and going back: each on a page of its own that says what it does. */
@Controller
class PassPages {

    private final GatePassing passing;
    private final Gates gates;
    private final Projects projects;
    private final ProjectAccess access;
    private final ProjectTitles titles;
    private final Words words;

    PassPages(
            GatePassing passing,
            Gates gates,
            Projects projects,
            ProjectAccess access,
            ProjectTitles titles,
            Words words) {
        this.passing = passing;
        this.gates = gates;
        this.projects = projects;
        this.access = access;
        this.titles = titles;
        this.words = words;
    }

    /** @param reachedOn the day as people count it */
    record PassForm(
            @NotNull(message = "Choose the day.") @Nullable LocalDate reachedOn) {}

    /** @param to an earlier stage; NEW for none */
    record BackForm(
            @NotNull(message = "Choose a stage.") @Nullable String to,
            @Nullable String reason) {}

    @GetMapping("/projects/{projectId}/gates/{gateStage}/pass")
    String askToPass(@PathVariable UUID projectId, @PathVariable String gateStage, Model model) {
        Stage to = GatePages.stage(gateStage);
        access.require(projectId, May.PASS_GATE);
        return passPage(projectId, to, new PassForm(words.today()), model);
    }

    private String passPage(UUID projectId, Stage to, PassForm form, Model model) {
        if (!model.containsAttribute("form")) {
            model.addAttribute("form", form);
        }
        ProjectFacts facts = projects.facts(projectId);
        GateView gate = gates.view(facts, to);
        model.addAttribute("sheet", titles.of(facts));
        model.addAttribute("gate", gate);
        model.addAttribute(
                "done",
                gate.items().stream().filter(item -> item.state().isSatisfied()).count());
        model.addAttribute(
                "waived",
                gate.items().stream()
                        .filter(item -> item.state().shape().equals("na"))
                        .toList());
        model.addAttribute("from", Stage.wordsOf(facts.stage()));
        model.addAttribute("after", Stage.after(to).map(Stage::words).orElse(""));
        return "gate/pass";
    }

    @PostMapping("/projects/{projectId}/gates/{gateStage}/pass")
    String pass(
            @PathVariable UUID projectId,
            @PathVariable String gateStage,
            @Valid @ModelAttribute("form") PassForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Stage to = GatePages.stage(gateStage);
        access.require(projectId, May.PASS_GATE);
        if (!errors.hasErrors() && form.reachedOn() != null) {
            passing.pass(projectId, to, form.reachedOn()).ifPresent(no -> no.putAt(errors));
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return passPage(projectId, to, form, model);
        }
        Flash.done(next, "Gate passed: " + to.words() + ".");
        return "redirect:/projects/{projectId}/gate";
    }

    @GetMapping("/projects/{projectId}/go-back")
    String askToGoBack(@PathVariable UUID projectId, Model model) {
        access.require(projectId, May.PASS_GATE);
        return backPage(projectId, new BackForm(null, ""), model);
    }

    private String backPage(UUID projectId, BackForm form, Model model) {
        if (!model.containsAttribute("form")) {
            model.addAttribute("form", form);
        }
        ProjectFacts facts = projects.facts(projectId);
        model.addAttribute("sheet", titles.of(facts));
        model.addAttribute("options", earlier(facts.stage()));
        return "gate/back";
    }

    private static List<Option> earlier(@Nullable Stage reached) {
        List<Option> options = new java.util.ArrayList<>();
        if (reached != null) {
            options.add(new Option("NEW", "New"));
        }
        Arrays.stream(Stage.values())
                .filter(stage -> stage.isReachedAt(reached) && stage != reached)
                .map(stage -> new Option(stage.name(), stage.words()))
                .forEach(options::add);
        java.util.Collections.reverse(options);
        return options;
    }

    @PostMapping("/projects/{projectId}/go-back")
    String goBack(
            @PathVariable UUID projectId,
            @Valid @ModelAttribute("form") BackForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        access.require(projectId, May.PASS_GATE);
        if (!errors.hasErrors()) {
            back(projectId, form).ifPresent(no -> no.putAt(errors));
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return backPage(projectId, form, model);
        }
        Flash.done(next, "Went back. What was answered stays, and can be changed again.");
        return "redirect:/projects/{projectId}/gate";
    }

    private Optional<Refusal> back(UUID projectId, BackForm form) {
        String to = String.valueOf(form.to());
        boolean known =
                Arrays.stream(Stage.values()).anyMatch(stage -> stage.name().equals(to));
        if (!known && !to.equals("NEW")) {
            return Optional.of(new Refusal("to", "Choose a stage."));
        }
        return passing.goBack(projectId, known ? Stage.valueOf(to) : null, form.reason() == null ? "" : form.reason());
    }
}
