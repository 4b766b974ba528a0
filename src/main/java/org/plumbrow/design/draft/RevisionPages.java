package org.plumbrow.design.draft;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.electrical.Verdict;
import org.plumbrow.design.check.DesignChecks;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Revisions of a design: frozen, compared, and what they made stale. */
@Controller
class RevisionPages {

    private static final int LONGEST_NOTE = 300;

    private final Revisions revisions;
    private final Designs designs;
    private final ProjectTitles titles;

    RevisionPages(Revisions revisions, Designs designs, ProjectTitles titles) {
        this.revisions = revisions;
        this.designs = designs;
        this.titles = titles;
    }

    /** @param seen version of the whole draft as the page showed it */
    record FreezeForm(@Nullable String why, @Nullable String seen) {}

    record CloseForm(
            @Nullable String how,
            @Nullable String note,
            @Nullable String version) {}

    /** @param changed against the one before, in words; empty for the first */
    record Line(Revision revision, List<String> changed) {}

    @GetMapping("/projects/{projectId}/design/revisions")
    String list(@PathVariable UUID projectId, Model model) {
        Designs.Draft draft = designs.draft(projectId);
        if (!draft.isBegun()) {
            return DesignPages.beginFirst(projectId);
        }
        model.addAttribute("form", new FreezeForm("", ""));
        return page(draft, model);
    }

    private String page(Designs.Draft draft, Model model) {
        UUID projectId = draft.project().id();
        List<Revision> all = revisions.of(projectId);
        model.addAttribute("sheet", titles.of(draft.project()));
        model.addAttribute("lines", lines(all));
        model.addAttribute("seen", draft.facts().version());
        model.addAttribute("unfrozen", all.isEmpty() ? List.of() : Revisions.differences(all.get(0), draft.parts()));
        model.addAttribute(
                "next", all.isEmpty() ? "A" : Revisions.after(all.get(0).letter()));
        model.addAttribute("failing", DesignChecks.count(DesignChecks.of(draft.facts()), Verdict.FAIL));
        model.addAttribute("stale", revisions.stale(projectId));
        return "design/revisions";
    }

    private static List<Line> lines(List<Revision> all) {
        return java.util.stream.IntStream.range(0, all.size())
                .mapToObj(at -> new Line(
                        all.get(at),
                        at + 1 < all.size()
                                ? Revisions.differences(
                                        all.get(at + 1), all.get(at).parts())
                                : List.of()))
                .toList();
    }

    @PostMapping("/projects/{projectId}/design/revisions")
    String freeze(
            @PathVariable UUID projectId,
            @ModelAttribute("form") FreezeForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Designs.Draft draft = designs.draft(projectId);
        if (!draft.isBegun()) {
            return DesignPages.beginFirst(projectId);
        }
        String why = new Entered(errors).within("why", "it", form.why(), LONGEST_NOTE);
        if (!errors.hasErrors() && !frozen(projectId, form, why, errors)) {
            response.setStatus(409);
            return page(designs.draft(projectId), model);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(draft, model);
        }
        Flash.done(next, "Frozen. It can be read and printed from here on and is never changed.");
        return "redirect:/projects/" + projectId + "/design/revisions";
    }

    /** @return false when somebody has changed the design since; what is wrong otherwise is said in the errors */
    private boolean frozen(UUID projectId, FreezeForm form, String why, BindingResult errors) {
        try {
            revisions.freeze(projectId, Entered.version(form.seen()), why).ifPresent(no -> no.putAt(errors));
            return true;
        } catch (EditedMeanwhile newer) {
            errors.reject(
                    "refused",
                    "Somebody has changed the design since you opened this page. Look at the changes below and freeze again.");
            return false;
        }
    }

    @GetMapping("/projects/{projectId}/design/stale/{staleId}")
    String stale(@PathVariable UUID projectId, @PathVariable UUID staleId, Model model) {
        StaleRows.Stale one = open(projectId, staleId).orElse(null);
        if (one == null) {
            return "redirect:/projects/" + projectId + "/design/revisions";
        }
        model.addAttribute("form", new CloseForm("RENEWED", "", Long.toString(one.version())));
        return stalePage(projectId, one, model);
    }

    /** Empty when it is not of this project: the list says what is. */
    private Optional<StaleRows.Stale> open(UUID projectId, UUID staleId) {
        return revisions.stale(projectId).stream()
                .filter(row -> row.id().equals(staleId))
                .findFirst();
    }

    private String stalePage(UUID projectId, StaleRows.Stale one, Model model) {
        model.addAttribute("sheet", titles.of(projectId));
        model.addAttribute("one", one);
        model.addAttribute(
                "hows",
                List.of(
                        new org.plumbrow.web.Option("RENEWED", "Renewed: the paper shows the new revision"),
                        new org.plumbrow.web.Option("NOT_TOUCHED", "Not touched by this change, because …")));
        return "design/stale";
    }

    @PostMapping("/projects/{projectId}/design/stale/{staleId}")
    String close(
            @PathVariable UUID projectId,
            @PathVariable UUID staleId,
            @ModelAttribute("form") CloseForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        StaleRows.Stale one = open(projectId, staleId).orElse(null);
        if (one == null) {
            return "redirect:/projects/" + projectId + "/design/revisions";
        }
        closed(projectId, one, form, errors).ifPresent(no -> no.putAt(errors));
        if (errors.hasErrors()) {
            response.setStatus(422);
            return stalePage(projectId, one, model);
        }
        Flash.done(next, one.document().title() + ": closed.");
        return "redirect:/projects/" + projectId + "/design/revisions";
    }

    private Optional<Refusal> closed(UUID projectId, StaleRows.Stale one, CloseForm form, BindingResult errors) {
        String note = Entered.text(form.note());
        if (note.length() > LONGEST_NOTE) {
            return Optional.of(new Refusal("note", "Write it in at most " + LONGEST_NOTE + " characters."));
        }
        StaleRows.How how = "RENEWED".equals(form.how())
                ? StaleRows.How.RENEWED
                : "NOT_TOUCHED".equals(form.how()) ? StaleRows.How.NOT_TOUCHED : null;
        if (how == null) {
            return Optional.of(new Refusal("how", "Choose one of the two."));
        }
        try {
            return revisions.close(projectId, one.id(), Entered.version(form.version()), how, note);
        } catch (EditedMeanwhile newer) {
            return Optional.of(Refusal.ofForm("Somebody has closed this meanwhile: " + one.note()));
        }
    }
}
