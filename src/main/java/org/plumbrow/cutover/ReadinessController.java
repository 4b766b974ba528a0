package org.plumbrow.cutover;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.Written;
import org.plumbrow.cutover.ReadyRows.Decision;
import org.plumbrow.cutover.ReadyRows.State;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Option;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The day before an outage: what is ready, item by item, and the word go, not yet or no-go of a named person. */
@Controller
class ReadinessController {

    private static final String BACK = "redirect:/projects/{projectId}/outage/readiness";

    private final Readying readying;
    private final Saving saving;

    ReadinessController(Readying readying, Saving saving) {
        this.readying = readying;
        this.saving = saving;
    }

    record ReadyForm(
            @Nullable String state,
            @Nullable String note,
            @Nullable String version) {}

    record GoForm(
            @Nullable String decision,
            @Nullable String person,
            @Nullable String reason) {}

    @GetMapping("/projects/{projectId}/outage/readiness")
    String readiness(@PathVariable UUID projectId, Model model) {
        model.addAttribute("goForm", new GoForm("", "", ""));
        return page(projectId, model);
    }

    private String page(UUID projectId, Model model) {
        model.addAttribute("view", readying.sheet(projectId));
        model.addAttribute(
                "decisions",
                Arrays.stream(Decision.values())
                        .map(one -> new Option(one.name(), one.words()))
                        .toList());
        return "cutover/readiness";
    }

    @PostMapping("/projects/{projectId}/outage/readiness")
    String decide(
            @PathVariable UUID projectId,
            @ModelAttribute("goForm") GoForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Decision decision = new Entered(errors)
                .choice("decision", Decision.class, form.decision())
                .orElse(null);
        return saving.of(errors, response, () -> page(projectId, model))
                .make(
                        () -> readying.decide(
                                projectId, decision, Entered.text(form.person()), Entered.text(form.reason())),
                        () -> {
                            Flash.done(next, "Written down, with the name of who says so.");
                            return BACK;
                        });
    }

    @GetMapping("/projects/{projectId}/outage/readiness/{readyItem}")
    String item(@PathVariable UUID projectId, @PathVariable String readyItem, Model model) {
        Readying.ItemSheet sheet = readying.item(projectId, of(readyItem));
        model.addAttribute(
                "readyForm",
                new ReadyForm(
                        sheet.said().version() < 0 ? "" : sheet.said().state().name(),
                        sheet.said().note(),
                        Long.toString(sheet.said().version())));
        return itemPage(sheet, model);
    }

    private static ReadyItem of(String slug) {
        return ReadyItem.of(slug).orElseThrow(NotFound::new);
    }

    private static String itemPage(Readying.ItemSheet sheet, Model model) {
        model.addAttribute("sheet", sheet);
        model.addAttribute(
                "states",
                Arrays.stream(State.values())
                        .map(one -> new Option(one.name(), one.words()))
                        .toList());
        return "cutover/readiness-item";
    }

    @PostMapping("/projects/{projectId}/outage/readiness/{readyItem}")
    String item(
            @PathVariable UUID projectId,
            @PathVariable String readyItem,
            @ModelAttribute("readyForm") ReadyForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        ReadyItem item = of(readyItem);
        State state =
                new Entered(errors).choice("state", State.class, form.state()).orElse(null);
        return saving.of(errors, response, () -> itemPage(readying.item(projectId, item), model))
                .make(
                        () -> readying.say(
                                projectId, item, state, Entered.text(form.note()), Entered.version(form.version())),
                        () -> {
                            Flash.done(next, item.words() + ": written down.");
                            return BACK;
                        },
                        model,
                        () -> written(state, Entered.text(form.note())),
                        () -> theirs(projectId, item));
    }

    private Saving.Theirs theirs(UUID projectId, ReadyItem item) {
        ReadyRows.Said said = readying.item(projectId, item).said();
        return new Saving.Theirs(
                "“" + item.words() + "”",
                "/projects/" + projectId + "/outage/readiness/" + item.slug(),
                said.version(),
                written(said.state(), said.note()));
    }

    private static List<Written> written(@Nullable State state, String note) {
        return List.of(
                Written.of("How it stands", "state", state, state == null ? "–" : state.words()),
                Written.of("Note", "note", note));
    }
}
