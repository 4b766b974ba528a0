package org.plumbrow.project.papers;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.evidence.Keeping;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.validation.Errors;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** All papers of a project: photos, documents, data files and signatures. */
@Controller
class PaperPages {

    private static final int ORDER = 80;
    private static final int MOST_LETTERS = 300;

    private final ProjectPapers papers;
    private final ProjectAccess access;
    private final ProjectTitles titles;

    PaperPages(ProjectPapers papers, ProjectAccess access, ProjectTitles titles) {
        this.papers = papers;
        this.access = access;
        this.titles = titles;
    }

    @Bean
    static ProjectPage papersPage() {
        return new ProjectPage(ORDER, "papers.page", "/papers", May.SEE_PROJECTS);
    }

    /** @param caption what it shows; may be empty */
    record PaperForm(@Nullable String caption) {}

    record HideForm(@Nullable String reason) {}

    @GetMapping("/projects/{projectId}/papers")
    String all(@PathVariable UUID projectId, Model model) {
        model.addAttribute("paperForm", new PaperForm(null));
        return page(projectId, model);
    }

    private String page(UUID projectId, Model model) {
        List<EvidenceFacts> all = papers.of(projectId);
        model.addAttribute("sheet", titles.of(projectId));
        model.addAttribute("papers", all);
        model.addAttribute(
                "shown", all.stream().filter(paper -> !paper.hidden()).count());
        return "papers/papers";
    }

    @PostMapping("/projects/{projectId}/papers")
    String add(
            @PathVariable UUID projectId,
            @ModelAttribute("paperForm") PaperForm form,
            BindingResult errors,
            @RequestParam(name = "file", required = false) @Nullable MultipartFile file,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        access.require(projectId, May.WRITE_EVIDENCE);
        bring(projectId, form.caption() == null ? "" : form.caption().strip(), file, errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(projectId, model);
        }
        Flash.done(next, "Kept among the project’s papers.");
        return "redirect:/projects/{projectId}/papers";
    }

    private void bring(UUID projectId, String caption, @Nullable MultipartFile file, Errors errors) {
        if (caption.length() > MOST_LETTERS) {
            errors.rejectValue("caption", "refused", "Write at most 300 letters.");
        } else if (file == null || file.isEmpty()) {
            errors.reject("refused", "Choose the file first.");
        } else if (papers.keep(projectId, Upload.of(file, caption)) instanceof Keeping.Refused refused) {
            errors.reject("refused", refused.sentence());
        }
    }

    @GetMapping("/projects/{projectId}/papers/{paperId}")
    String one(@PathVariable UUID projectId, @PathVariable UUID paperId, Model model) {
        model.addAttribute("hideForm", new HideForm(null));
        return paper(projectId, paperId, model);
    }

    private String paper(UUID projectId, UUID paperId, Model model) {
        model.addAttribute("paper", papers.one(projectId, paperId));
        model.addAttribute("sheet", titles.of(projectId));
        return "papers/paper";
    }

    @PostMapping("/projects/{projectId}/papers/{paperId}/hide")
    String hide(
            @PathVariable UUID projectId,
            @PathVariable UUID paperId,
            @ModelAttribute("hideForm") HideForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        papers.hide(projectId, paperId, form.reason() == null ? "" : form.reason())
                .ifPresent(no -> no.putAt(errors));
        if (errors.hasErrors()) {
            response.setStatus(422);
            return paper(projectId, paperId, model);
        }
        Flash.doneWithUndo(
                next,
                "Hidden. It stays kept, and project managers can show it again.",
                "/projects/" + projectId + "/papers/" + paperId + "/show");
        return "redirect:/projects/{projectId}/papers";
    }

    @PostMapping("/projects/{projectId}/papers/{paperId}/show")
    String show(@PathVariable UUID projectId, @PathVariable UUID paperId, RedirectAttributes next) {
        if (papers.show(projectId, paperId)) {
            Flash.done(next, "Shown again.");
        }
        return "redirect:/projects/{projectId}/papers";
    }
}
