package org.plumbrow.status.desk;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.Saving;
import org.plumbrow.project.JournalLine;
import org.plumbrow.project.JournalUndo;
import org.plumbrow.status.CustomerSharing;
import org.plumbrow.status.desk.DeskForms.PaperForm;
import org.plumbrow.web.Flash;
import org.plumbrow.web.Paging;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Which of a project's papers the customer may open: none, until somebody chooses one and gives it a title. */
@Controller("customerPaperPages")
class PaperPages implements JournalUndo {

    private static final String BACK = "redirect:/projects/{projectId}/customer";

    private final DeskReading reading;
    private final CustomerSharing sharing;
    private final Saving saving;

    PaperPages(DeskReading reading, CustomerSharing sharing, Saving saving) {
        this.reading = reading;
        this.sharing = sharing;
        this.saving = saving;
    }

    @GetMapping("/projects/{projectId}/customer/papers")
    String all(@PathVariable UUID projectId, @RequestParam(name = "page", defaultValue = "1") int page, Model model) {
        List<DeskReading.Sharable> papers = reading.sharable(projectId);
        Paging paging = Paging.of(page, papers.size());
        model.addAttribute("papers", papers.subList((int) paging.offset(), (int) paging.last()));
        model.addAttribute("paging", paging);
        model.addAttribute("about", reading.title(projectId));
        return "status/papers";
    }

    @GetMapping("/projects/{projectId}/customer/papers/{paperId}")
    String one(@PathVariable UUID projectId, @PathVariable UUID paperId, Model model) {
        DeskReading.Sharable paper = reading.sharable(projectId, paperId);
        String caption = paper.evidence().caption();
        model.addAttribute("paperForm", new PaperForm(paper.title().isEmpty() ? caption : paper.title()));
        return page(projectId, paperId, model);
    }

    private String page(UUID projectId, UUID paperId, Model model) {
        model.addAttribute("paper", reading.sharable(projectId, paperId));
        model.addAttribute("about", reading.title(projectId));
        return "status/paper";
    }

    @PostMapping("/projects/{projectId}/customer/papers/{paperId}")
    String share(
            @PathVariable UUID projectId,
            @PathVariable UUID paperId,
            @ModelAttribute("paperForm") PaperForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        return saving.of(errors, response, () -> page(projectId, paperId, model))
                .make(() -> sharing.share(projectId, paperId, DeskForms.text(form.title())), () -> {
                    Flash.doneWithUndo(next, "The customer can open it now.", address(projectId, paperId, "stop"));
                    return BACK;
                });
    }

    @PostMapping("/projects/{projectId}/customer/papers/{paperId}/stop")
    String stop(@PathVariable UUID projectId, @PathVariable UUID paperId, RedirectAttributes next) {
        if (sharing.stopSharing(projectId, paperId)) {
            Flash.doneWithUndo(next, "The customer can no longer open it.", address(projectId, paperId, "again"));
        } else {
            Flash.done(next, "It was not shared.");
        }
        return BACK;
    }

    @PostMapping("/projects/{projectId}/customer/papers/{paperId}/again")
    String again(@PathVariable UUID projectId, @PathVariable UUID paperId, RedirectAttributes next) {
        Flash.done(
                next,
                sharing.shareAgain(projectId, paperId) ? "The customer can open it again." : "Nothing was changed.");
        return BACK;
    }

    @Override
    public Optional<String> action(JournalLine line) {
        String paper = line.facts().get("paper");
        if (paper == null) {
            return Optional.empty();
        }
        return switch (line.kind()) {
            case "status.shared" -> Optional.of(address(line.projectId(), UUID.fromString(paper), "stop"));
            case "status.unshared" -> Optional.of(address(line.projectId(), UUID.fromString(paper), "again"));
            default -> Optional.empty();
        };
    }

    private static String address(UUID projectId, UUID paperId, String act) {
        return "/projects/" + projectId + "/customer/papers/" + paperId + "/" + act;
    }
}
