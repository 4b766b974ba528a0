package org.plumbrow.project.gate.page;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.plumbrow.evidence.Keeping;
import org.plumbrow.evidence.NewSignature;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.gate.GateAnswers;
import org.plumbrow.project.gate.Given;
import org.plumbrow.project.gate.ItemAnswer;
import org.plumbrow.project.gate.ItemView;
import org.plumbrow.project.papers.ProjectPapers;
import org.plumbrow.web.Conflict;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Flash;
import org.plumbrow.web.Refusal;
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

/** Answering one item: one form that asks for what the item asks for. */
@Controller
class ItemPages {

    private final ItemDesk desk;
    private final GateAnswers answers;
    private final ProjectPapers papers;

    ItemPages(ItemDesk desk, GateAnswers answers, ProjectPapers papers) {
        this.desk = desk;
        this.answers = answers;
        this.papers = papers;
    }

    @GetMapping("/projects/{projectId}/gate-items/{gateItem}")
    String one(@PathVariable UUID projectId, @PathVariable String gateItem, Model model) {
        return desk.page(projectId, gateItem, null, model);
    }

    @PostMapping("/projects/{projectId}/gate-items/{gateItem}")
    String answer(
            @PathVariable UUID projectId,
            @PathVariable String gateItem,
            @ModelAttribute("form") ItemForm form,
            BindingResult errors,
            @RequestParam(name = "photo", required = false) @Nullable MultipartFile photo,
            @RequestParam(name = "document", required = false) @Nullable MultipartFile document,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        ItemView item = desk.toAnswer(projectId, gateItem);
        ItemForm kept = keepFiles(projectId, form, photo, document, errors);
        // A model forgets the errors of an attribute that is replaced: they follow it.
        model.addAttribute("form", kept);
        model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", errors);
        try {
            answer(projectId, item, kept, errors);
        } catch (EditedMeanwhile newer) {
            response.setStatus(409);
            return conflict(projectId, gateItem, kept, model);
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return desk.page(projectId, gateItem, kept, model);
        }
        return desk.done(projectId, gateItem, next);
    }

    /** Gives what was filled in; whatever is wrong with it lies in the errors. */
    private void answer(UUID projectId, ItemView item, ItemForm form, Errors errors) {
        List<Given> parts = form.given(item.asked(), errors);
        if (!errors.hasErrors() && form.signs()) {
            EditedMeanwhile.check(form.seen(), item.version());
            sign(projectId, item, form, errors).ifPresent(parts::add);
        }
        if (!errors.hasErrors()) {
            answers.answer(projectId, new ItemAnswer(item.code(), form.seen(), parts))
                    .ifPresent(no -> no.putAt(errors));
        }
    }

    private String conflict(UUID projectId, String code, ItemForm yours, Model model) {
        ItemView theirs = desk.item(projectId, code);
        return new Conflict(
                        "“" + theirs.asked().words() + "”",
                        ItemDesk.address(projectId, code),
                        theirs.version(),
                        yours.beside(theirs))
                .show(model);
    }

    /** Files are kept at once, whatever becomes of the answer: a browser does not give them a second time. */
    private ItemForm keepFiles(
            UUID projectId,
            ItemForm form,
            @Nullable MultipartFile photo,
            @Nullable MultipartFile document,
            Errors errors) {
        List<String> photos = new ArrayList<>(ItemForm.list(form.photoId()));
        List<String> documents = new ArrayList<>(ItemForm.list(form.documentId()));
        keep(projectId, photo, photos, (field, sentence) -> errors.rejectValue("photoId", "refused", sentence));
        keep(
                projectId,
                document,
                documents,
                (field, sentence) -> errors.rejectValue("documentId", "refused", sentence));
        return form.with(photos, documents);
    }

    private void keep(
            UUID projectId, @Nullable MultipartFile file, List<String> ids, BiConsumer<String, String> refuse) {
        if (file == null || file.isEmpty()) {
            return;
        }
        Keeping keeping = papers.keep(projectId, Upload.of(file, ""));
        if (keeping instanceof Keeping.Kept kept) {
            ids.add(kept.evidence().id().toString());
        } else if (keeping instanceof Keeping.Refused refused) {
            refuse.accept(file.getName(), refused.sentence());
        }
    }

    private Optional<Given> sign(UUID projectId, ItemView item, ItemForm form, Errors errors) {
        Keeping keeping = papers.sign(
                projectId,
                new NewSignature(
                        ItemForm.text(form.signerName()),
                        ItemForm.text(form.signerTrade()),
                        item.asked().words(),
                        form.drawing()));
        if (keeping instanceof Keeping.Kept kept) {
            return Optional.of(Given.signature(kept.evidence().id()));
        }
        errors.rejectValue("signerName", "refused", ((Keeping.Refused) keeping).sentence());
        return Optional.empty();
    }

    @PostMapping("/projects/{projectId}/gate-items/{gateItem}/undo")
    String undo(
            @PathVariable UUID projectId,
            @PathVariable String gateItem,
            @RequestParam(name = "version", defaultValue = "0") long version,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        desk.toAnswer(projectId, gateItem);
        Optional<Refusal> no = answers.undo(projectId, gateItem, version);
        if (no.isPresent()) {
            response.setStatus(422);
            model.addAttribute("refused", no.get().sentence());
            return desk.page(projectId, gateItem, null, model);
        }
        Flash.done(next, "Undone. The item stands as before.");
        return "redirect:/projects/{projectId}/gate-items/{gateItem}";
    }
}
