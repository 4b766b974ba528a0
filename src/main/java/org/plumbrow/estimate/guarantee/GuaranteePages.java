package org.plumbrow.estimate.guarantee;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.Written;
import org.plumbrow.project.ProjectLimits;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Words;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What a project's promise of production may cost, and which promise is made. */
@Controller
class GuaranteePages {

    private static final int ORDER = 450;
    private static final String PAGE = "/projects/{projectId}/guarantee";

    private final GuaranteeReading reading;
    private final GuaranteeEditing editing;
    private final Saving saving;
    private final Words words;

    GuaranteePages(GuaranteeReading reading, GuaranteeEditing editing, Saving saving, Words words) {
        this.reading = reading;
        this.editing = editing;
        this.saving = saving;
        this.words = words;
    }

    @Bean
    static ProjectPage guaranteePage() {
        return new ProjectPage(ORDER, "estimate.guarantee.page", "/guarantee", May.SEE_MONEY);
    }

    /** @param kwh to be weighed, or to be written into the contract @param version of the contract */
    record PromiseForm(@Nullable String kwh, @Nullable String version) {

        @Nullable
        Integer read(Entered typed) {
            return typed.whole("kwh", "the promised energy", kwh, ProjectLimits.GUARANTEED_KWH);
        }

        List<Written> written() {
            return List.of(Written.of("Promised for the first year, kWh", "kwh", Entered.text(kwh)));
        }
    }

    @GetMapping(PAGE)
    String show(
            @PathVariable UUID projectId,
            @ModelAttribute("promiseForm") PromiseForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        Integer tried = form.read(new Entered(errors));
        if (errors.hasErrors()) {
            response.setStatus(422);
        }
        return page(reading.page(projectId, tried), model);
    }

    private String page(GuaranteeReading.Page page, Model model) {
        model.addAttribute("sheet", page.title());
        model.addAttribute("view", page.view());
        model.addAttribute("contractVersion", page.contractVersion());
        model.addAttribute("heading", heading(page));
        return "estimate/guarantee";
    }

    /** The answer first; what it cannot say yet stands below it as missing. */
    private String heading(GuaranteeReading.Page page) {
        String name = page.title().name();
        GuaranteeView view = page.view();
        Integer promised = view.project().contract().guaranteedKwhPerYear();
        if (promised == null) {
            return "%s: nothing is promised yet".formatted(name);
        }
        String kwh = words.number(promised, 0);
        GuaranteeView.Choice contract = view.ofContract();
        if (contract == null || view.terms() == null) {
            return "%s promises %s kWh a year".formatted(name, kwh);
        }
        return "%s promises %s kWh: %s a year owed on average"
                .formatted(name, kwh, Usd.of(contract.cost().expectedPayoutAYearUsd()));
    }

    @PostMapping(PAGE)
    String promise(
            @PathVariable UUID projectId,
            @ModelAttribute("promiseForm") PromiseForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Entered typed = new Entered(errors);
        Integer kwh = form.read(typed);
        if (kwh == null && !errors.hasErrors()) {
            typed.refuse("kwh", "Write the promised energy as a whole number of kWh.");
        }
        List<Optional<Integer>> lines = new ArrayList<>();
        return saving.of(errors, response, () -> page(reading.page(projectId, null), model))
                .make(
                        () -> {
                            lines.add(editing.promise(projectId, Entered.version(form.version()), chosen(kwh)));
                            return Optional.empty();
                        },
                        () -> promised(projectId, lines.get(0), chosen(kwh), next),
                        model,
                        form::written,
                        () -> theirs(projectId));
    }

    private static int chosen(@Nullable Integer kwh) {
        return java.util.Objects.requireNonNull(kwh, "refused before");
    }

    private String promised(UUID projectId, Optional<Integer> line, int kwh, RedirectAttributes next) {
        String now = "The contract promises %s kWh a year now.".formatted(words.number(kwh, 0));
        if (line.isPresent()) {
            String undo = "/projects/%s/journal/%d/undo".formatted(projectId, line.get());
            Flash.doneWithUndo(next, now + " The journal says what it was.", undo);
        } else {
            Flash.done(next, "The contract promised %s kWh already.".formatted(words.number(kwh, 0)));
        }
        return "redirect:" + PAGE;
    }

    private Saving.Theirs theirs(UUID projectId) {
        GuaranteeReading.Page now = reading.page(projectId, null);
        Integer kwh = now.view().project().contract().guaranteedKwhPerYear();
        String written = kwh == null ? "" : kwh.toString();
        return new Saving.Theirs(
                "the contract",
                "/projects/" + projectId + "/guarantee",
                now.contractVersion(),
                new PromiseForm(written, null).written());
    }

    @GetMapping(PAGE + "/terms")
    String terms(@PathVariable UUID projectId, Model model) {
        GuaranteeReading.Terms terms = reading.terms(projectId);
        GuaranteeRows.Kept kept = terms.kept();
        model.addAttribute("termsForm", kept == null ? TermsForm.BLANK : TermsForm.of(kept));
        return termsPage(terms, model);
    }

    private static String termsPage(GuaranteeReading.Terms terms, Model model) {
        model.addAttribute("sheet", terms.title());
        model.addAttribute("weatherChoices", TermsForm.WEATHER);
        model.addAttribute("surplusChoices", TermsForm.SURPLUS);
        return "estimate/guarantee-terms";
    }

    @PostMapping(PAGE + "/terms")
    String change(
            @PathVariable UUID projectId,
            @ModelAttribute("termsForm") TermsForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        PromiseTerms terms = form.read(new Entered(errors));
        return saving.of(errors, response, () -> termsPage(reading.terms(projectId), model))
                .make(
                        () -> {
                            editing.change(projectId, Entered.version(form.version()), terms);
                            return Optional.empty();
                        },
                        () -> {
                            Flash.done(next, "Saved. What is owed is reckoned by these terms.");
                            return "redirect:" + PAGE;
                        },
                        model,
                        terms::written,
                        () -> theirTerms(projectId));
    }

    private Saving.Theirs theirTerms(UUID projectId) {
        GuaranteeRows.Kept now = reading.terms(projectId).kept();
        return new Saving.Theirs(
                "the terms of the guarantee",
                "/projects/" + projectId + "/guarantee/terms",
                now == null ? -1 : now.version(),
                now == null ? List.of() : now.terms().written());
    }
}
