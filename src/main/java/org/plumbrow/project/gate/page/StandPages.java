package org.plumbrow.project.gate.page;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.gate.GateAnswers;
import org.plumbrow.project.gate.ItemView;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What stands in place of an answer: waived, does not apply, asked anew; and on whom an item waits. */
@Controller
class StandPages {

    private static final String MEANWHILE =
            "Somebody changed this item after you opened it. It stands below as it is now.";

    private final ItemDesk desk;
    private final GateAnswers answers;
    private final ProjectAccess access;

    StandPages(ItemDesk desk, GateAnswers answers, ProjectAccess access) {
        this.desk = desk;
        this.answers = answers;
        this.access = access;
    }

    record StandForm(@Nullable Long version, @Nullable String reason) {
        String why() {
            return ItemForm.text(reason);
        }

        long seen() {
            return version == null ? 0 : version;
        }
    }

    record WaitForm(
            @Nullable Long version,
            @Nullable String waitsOn,
            @Nullable String promisedOn) {
        static WaitForm of(ItemView item) {
            return item.answer() == null
                    ? new WaitForm(0L, null, null)
                    : new WaitForm(
                            item.version(),
                            item.answer().waitsOn(),
                            item.answer().promisedOn() == null
                                    ? null
                                    : item.answer().promisedOn().toString());
        }
    }

    @PostMapping("/projects/{projectId}/gate-items/{gateItem}/waive")
    String waive(
            @PathVariable UUID projectId,
            @PathVariable String gateItem,
            @ModelAttribute("standForm") StandForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        access.require(projectId, May.WAIVE);
        return made(
                new Posted(projectId, gateItem, errors, model, response, next),
                () -> answers.waive(projectId, gateItem, form.seen(), form.why()));
    }

    @PostMapping("/projects/{projectId}/gate-items/{gateItem}/does-not-apply")
    String doesNotApply(
            @PathVariable UUID projectId,
            @PathVariable String gateItem,
            @ModelAttribute("standForm") StandForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        return made(
                new Posted(projectId, gateItem, errors, model, response, next),
                () -> answers.doesNotApply(projectId, gateItem, form.seen(), form.why()));
    }

    @PostMapping("/projects/{projectId}/gate-items/{gateItem}/reopen")
    String reopen(
            @PathVariable UUID projectId,
            @PathVariable String gateItem,
            @ModelAttribute("standForm") StandForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        return made(
                new Posted(projectId, gateItem, errors, model, response, next),
                () -> answers.reopen(projectId, gateItem, form.seen(), form.why()));
    }

    @PostMapping("/projects/{projectId}/gate-items/{gateItem}/waits-on")
    String waitsOn(
            @PathVariable UUID projectId,
            @PathVariable String gateItem,
            @ModelAttribute("waitForm") WaitForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        long version = form.version() == null ? 0 : form.version();
        LocalDate promisedOn = Days.read(form.promisedOn()).orElse(null);
        if (promisedOn == null && !ItemForm.text(form.promisedOn()).isEmpty()) {
            errors.rejectValue("promisedOn", "refused", Days.REFUSAL);
        }
        return made(
                new Posted(projectId, gateItem, errors, model, response, next),
                () -> answers.waitsOn(projectId, gateItem, version, ItemForm.text(form.waitsOn()), promisedOn));
    }

    /** What came, and where the answer goes. */
    private record Posted(
            UUID projectId,
            String code,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {}

    private String made(Posted posted, Supplier<Optional<Refusal>> act) {
        UUID projectId = posted.projectId;
        desk.toAnswer(projectId, posted.code);
        try {
            if (!posted.errors.hasErrors()) {
                act.get().ifPresent(no -> no.putAt(posted.errors));
            }
        } catch (EditedMeanwhile newer) {
            // The newer state is on the page itself, and what was typed stays in its field.
            posted.response.setStatus(409);
            posted.model.addAttribute("refused", MEANWHILE);
            return desk.page(projectId, posted.code, null, posted.model);
        }
        if (posted.errors.hasErrors()) {
            posted.response.setStatus(422);
            return desk.page(projectId, posted.code, null, posted.model);
        }
        return desk.stood(projectId, posted.code, posted.next);
    }
}
