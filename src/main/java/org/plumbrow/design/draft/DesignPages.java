package org.plumbrow.design.draft;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Saving;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Col;
import org.plumbrow.design.part.Part;
import org.plumbrow.design.part.PartForm;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Option;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.WebDataBinder;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.InitBinder;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A project's design: asked for, drawn part by part, held against the rules. */
@Controller
class DesignPages {

    private static final int ORDER = 200;
    private static final int MOST_ROWS = 2_100;

    private final DesignViews views;
    private final Designs designs;
    private final DesignEditing editing;
    private final DesignBeginning beginning;
    private final ProjectTitles titles;
    private final Saving saving;

    DesignPages(
            DesignViews views,
            Designs designs,
            DesignEditing editing,
            DesignBeginning beginning,
            ProjectTitles titles,
            Saving saving) {
        this.views = views;
        this.designs = designs;
        this.editing = editing;
        this.beginning = beginning;
        this.titles = titles;
        this.saving = saving;
    }

    @Bean
    static ProjectPage designPage() {
        return new ProjectPage(ORDER, "design.page", "/design", May.SEE_DESIGN);
    }

    @InitBinder("form")
    void manyRows(WebDataBinder binder) {
        binder.setAutoGrowCollectionLimit(MOST_ROWS);
    }

    /** @param wantedOn the day by which the design is wanted, as a date field sends it */
    record RequestForm(@Nullable String wantedOn) {}

    @GetMapping("/projects/{projectId}/design")
    String overview(@PathVariable UUID projectId, Model model) {
        model.addAttribute("request", new RequestForm(""));
        return overviewAgain(projectId, model);
    }

    private String overviewAgain(UUID projectId, Model model) {
        DesignViews.Overview overview = views.overview(projectId);
        model.addAttribute("sheet", titles.of(overview.draft().project()));
        model.addAttribute("view", overview);
        return "design/design";
    }

    @PostMapping("/projects/{projectId}/design")
    String begin(
            @PathVariable UUID projectId,
            @ModelAttribute("request") RequestForm request,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        LocalDate wanted = date(request.wantedOn(), errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return overviewAgain(projectId, model);
        }
        beginning.begin(projectId, wanted);
        Flash.done(next, "The design is begun. What survey and contract say is filled in; look at it part by part.");
        return "redirect:/projects/" + projectId + "/design";
    }

    private static @Nullable LocalDate date(@Nullable String typed, BindingResult errors) {
        if (typed == null || typed.isBlank()) {
            return null;
        }
        try {
            return LocalDate.parse(typed.strip());
        } catch (DateTimeParseException none) {
            errors.rejectValue("wantedOn", "refused", "Write the day as a date, for example 2027-03-26.");
            return null;
        }
    }

    @GetMapping("/projects/{projectId}/design/part/{designPart}")
    String part(@PathVariable UUID projectId, @PathVariable String designPart, Model model) {
        Part which = Part.of(designPart).orElseThrow(NotFound::new);
        Designs.Draft draft = designs.draft(projectId);
        if (!draft.isBegun()) {
            return beginFirst(projectId);
        }
        DesignRows.Kept kept = draft.kept(which);
        model.addAttribute("form", PartForm.of(kept.rows(), which.cols(), which.isRepeated(), kept.version()));
        return partAgain(draft, which, model);
    }

    /** Nobody has asked for a design: that is said, and done, on its first page. */
    static String beginFirst(UUID projectId) {
        return "redirect:/projects/" + projectId + "/design";
    }

    private String partAgain(Designs.Draft draft, Part part, Model model) {
        model.addAttribute("sheet", titles.of(draft.project()));
        model.addAttribute("part", part);
        model.addAttribute("cols", part.cols());
        model.addAttribute("offers", new Offered(views.offers(draft)));
        model.addAttribute("proposes", Proposer.knows(part));
        return "design/part";
    }

    /** For the template: choices of a field with an empty one first. */
    record Offered(PartForm.Offers offers) {
        public List<Option> of(Col col) {
            return DesignViews.withNone(col, offers.of(col));
        }

        /** What tells a row from others, beside its mark. */
        public String words(List<Col> cols, PartForm.Row row) {
            return PartForm.summary(row, cols, offers);
        }
    }

    @GetMapping("/projects/{projectId}/design/part/{designPart}/proposal")
    String propose(@PathVariable UUID projectId, @PathVariable String designPart, Model model) {
        Part which = Part.of(designPart).filter(Proposer::knows).orElseThrow(NotFound::new);
        Designs.Draft draft = designs.draft(projectId);
        if (!draft.isBegun()) {
            return beginFirst(projectId);
        }
        List<Cells> proposed = views.proposed(draft, which);
        model.addAttribute(
                "form",
                PartForm.of(proposed, which.cols(), true, draft.kept(which).version()));
        model.addAttribute("proposal", true);
        return partAgain(draft, which, model);
    }

    @PostMapping("/projects/{projectId}/design/part/{designPart}")
    String keep(
            @PathVariable UUID projectId,
            @PathVariable String designPart,
            @ModelAttribute("form") PartForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Part which = Part.of(designPart).orElseThrow(NotFound::new);
        Designs.Draft draft = designs.draft(projectId);
        PartForm.Offers offers = views.offers(draft);
        List<Cells> read = form.read(which.cols(), offers, errors);
        String address = "/projects/" + projectId + "/design/part/" + which.slug();
        return saving.of(errors, response, () -> partAgain(draft, which, model))
                .make(
                        () -> editing.keep(projectId, which, form.version(), read),
                        () -> {
                            Flash.done(next, which.title() + ": saved.");
                            return "redirect:" + address;
                        },
                        model,
                        () -> PartForm.written(read, which.cols(), offers),
                        () -> theirs(projectId, which, address, offers));
    }

    private Saving.Theirs theirs(UUID projectId, Part part, String address, PartForm.Offers offers) {
        DesignRows.Kept now = designs.draft(projectId).kept(part);
        return new Saving.Theirs(
                "the part “" + DesignViews.lower(part.title()) + "” of the design",
                address,
                now.version(),
                PartForm.written(now.rows(), part.cols(), offers));
    }

    @GetMapping("/projects/{projectId}/design/checks")
    String checks(@PathVariable UUID projectId, Model model) {
        DesignViews.Overview overview = views.overview(projectId);
        if (!overview.draft().isBegun()) {
            return beginFirst(projectId);
        }
        model.addAttribute("sheet", titles.of(overview.draft().project()));
        model.addAttribute("view", overview);
        model.addAttribute("first", CheckView.First.of(overview.checks()));
        model.addAttribute("passing", CheckView.Passing.of(overview.checks()));
        return "design/checks";
    }
}
