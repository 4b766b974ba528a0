package org.plumbrow.estimate.savings;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.UUID;
import org.plumbrow.branch.Saving;
import org.plumbrow.calc.finance.Incentive;
import org.plumbrow.calc.finance.Savings;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Option;
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

/** What a project saves over the years, and the terms that it is worked out with. */
@Controller
class SavingsPages {

    private static final int ORDER = 440;

    private final SavingsBook book;
    private final Saving saving;
    private final Words words;

    SavingsPages(SavingsBook book, Saving saving, Words words) {
        this.book = book;
        this.saving = saving;
        this.words = words;
    }

    @Bean
    static ProjectPage savingsPage() {
        return new ProjectPage(ORDER, "estimate.savings.page", "/savings", May.SEE_MONEY);
    }

    @GetMapping("/projects/{projectId}/savings")
    String show(@PathVariable UUID projectId, Model model) {
        SavingsBook.Page page = book.page(projectId);
        model.addAttribute("sheet", page.title());
        model.addAttribute("page", page);
        SavingsBook.Basis basis = page.basis();
        if (basis != null) {
            answer(basis, "/projects/" + projectId, model);
        }
        return "estimate/savings";
    }

    private void answer(SavingsBook.Basis basis, String project, Model model) {
        SavingsFigures figures = new SavingsFigures(basis, words);
        Savings likely = basis.range().likely();
        model.addAttribute("basis", basis);
        model.addAttribute("low", figures.usd(basis.range().low().billUsd()));
        model.addAttribute("likely", figures.usd(likely.billUsd()));
        model.addAttribute("high", figures.usd(basis.range().high().billUsd()));
        model.addAttribute("figures", figures.all());
        model.addAttribute("paidBack", figures.paidBack());
        model.addAttribute("ends", figures.ends());
        model.addAttribute("loan", figures.loan());
        model.addAttribute("grounds", SavingsGrounds.of(basis, figures, words, project));
        model.addAttribute("years", SavingsYears.of(basis.range()));
    }

    @GetMapping("/projects/{projectId}/savings/terms")
    String terms(@PathVariable UUID projectId, Model model) {
        SavingsBook.Sheet sheet = book.terms(projectId);
        model.addAttribute("savingsForm", SavingsForm.of(sheet.kept()));
        return page(sheet, model);
    }

    private static String page(SavingsBook.Sheet sheet, Model model) {
        model.addAttribute("sheet", sheet.title());
        model.addAttribute("usual", sheet.kept().isUsual());
        model.addAttribute(
                "kinds",
                Arrays.stream(Incentive.Kind.values())
                        .map(kind -> new Option(kind.name(), IncentiveForm.words(kind)))
                        .toList());
        return "estimate/savings-terms";
    }

    @PostMapping("/projects/{projectId}/savings/terms")
    String change(
            @PathVariable UUID projectId,
            @ModelAttribute("savingsForm") SavingsForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        SavingsBook.Sheet before = book.terms(projectId);
        SavingsTerms terms = form.read(new Entered(errors));
        return saving.of(errors, response, () -> page(before, model))
                .make(
                        () -> book.change(projectId, Entered.version(form.version()), terms),
                        () -> {
                            Flash.done(next, "Saved, and the savings are worked out with it.");
                            return "redirect:/projects/{projectId}/savings";
                        },
                        model,
                        form::written,
                        () -> theirs(projectId));
    }

    private Saving.Theirs theirs(UUID projectId) {
        SavingsRows.Kept now = book.terms(projectId).kept();
        return new Saving.Theirs(
                "the terms of these savings",
                "/projects/" + projectId + "/savings/terms",
                now.version(),
                SavingsForm.of(now).written());
    }
}
