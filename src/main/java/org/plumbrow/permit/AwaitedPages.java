package org.plumbrow.permit;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Saving;
import org.plumbrow.database.Ids;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Option;
import org.plumbrow.web.Place;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What a project waits for, and who owes the branch what. */
@Controller
class AwaitedPages {

    private static final int ORDER = 300;
    private static final int PLACE_ORDER = 45;
    private static final String ALL = "/waits";
    private static final String PAGE = "/projects/{projectId}/waits";
    private static final String ONE = PAGE + "/{awaitedId}";

    private final OwedReading reading;
    private final AwaitedBook book;
    private final Projects projects;
    private final ProjectAccess projectAccess;
    private final ProjectTitles titles;
    private final Saving saving;

    AwaitedPages(
            OwedReading reading,
            AwaitedBook book,
            Projects projects,
            ProjectAccess projectAccess,
            ProjectTitles titles,
            Saving saving) {
        this.reading = reading;
        this.book = book;
        this.projects = projects;
        this.projectAccess = projectAccess;
        this.titles = titles;
        this.saving = saving;
    }

    @Bean
    static ProjectPage awaitedPage() {
        return new ProjectPage(ORDER, "permit.page", "/waits", May.SEE_JOURNAL);
    }

    @Bean
    static Place owedPlace() {
        return Place.underOwnName(PLACE_ORDER, "permit.place", ALL, May.SEE_LOOK_AHEAD);
    }

    @GetMapping(ALL)
    String branch(Model model) {
        model.addAttribute("owed", reading.branch());
        return "permit/owed";
    }

    @GetMapping(PAGE)
    String project(@PathVariable UUID projectId, Model model) {
        OwedReading.OfProject view = reading.project(projectId);
        model.addAttribute("sheet", view.title());
        model.addAttribute("view", view);
        return "permit/waits";
    }

    @GetMapping(PAGE + "/new")
    String blank(
            @PathVariable UUID projectId,
            @RequestParam(name = "again", required = false) @Nullable UUID before,
            Model model) {
        projectAccess.require(projectId, May.EDIT_PROJECT);
        model.addAttribute(
                "awaitedForm", before == null ? AwaitedForm.EMPTY : AwaitedForm.again(book.one(projectId, before)));
        return form(projectId, "/new", model);
    }

    @PostMapping(PAGE + "/new")
    String add(
            @PathVariable UUID projectId,
            @ModelAttribute("awaitedForm") AwaitedForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        projectAccess.require(projectId, May.EDIT_PROJECT);
        Awaited typed = form.read(new Entered(errors), Ids.next(), projectId);
        return saving.of(errors, response, () -> form(projectId, "/new", model))
                .make(() -> book.add(typed), () -> saved(projectId, next));
    }

    @GetMapping(ONE)
    String one(@PathVariable UUID projectId, @PathVariable UUID awaitedId, Model model) {
        model.addAttribute("awaitedForm", AwaitedForm.of(book.one(projectId, awaitedId)));
        return known(projectId, awaitedId, model);
    }

    @PostMapping(ONE)
    String change(
            @PathVariable UUID projectId,
            @PathVariable UUID awaitedId,
            @ModelAttribute("awaitedForm") AwaitedForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        book.one(projectId, awaitedId);
        Awaited typed = form.read(new Entered(errors), awaitedId, projectId);
        return saving.of(errors, response, () -> known(projectId, awaitedId, model))
                .make(
                        () -> book.change(typed),
                        () -> saved(projectId, next),
                        model,
                        form::written,
                        () -> theirs(projectId, awaitedId));
    }

    private static String saved(UUID projectId, RedirectAttributes next) {
        Flash.done(next, "Written down. The journal says by whom.");
        return "redirect:/projects/" + projectId + "/waits";
    }

    private Saving.Theirs theirs(UUID projectId, UUID awaitedId) {
        Awaited now = book.one(projectId, awaitedId);
        return new Saving.Theirs(
                "this wait",
                "/projects/" + projectId + "/waits/" + awaitedId,
                now.version(),
                AwaitedForm.of(now).written());
    }

    private String known(UUID projectId, UUID awaitedId, Model model) {
        model.addAttribute("line", reading.one(projectId, awaitedId));
        model.addAttribute("reminders", book.remindersOf(awaitedId));
        return form(projectId, "/" + awaitedId, model);
    }

    private String form(UUID projectId, String suffix, Model model) {
        model.addAttribute("sheet", titles.of(projects.facts(projectId)));
        model.addAttribute("action", "/projects/" + projectId + "/waits" + suffix);
        model.addAttribute(
                "kinds",
                options(
                        "Choose",
                        Arrays.stream(AwaitedKind.values()).map(kind -> new Option(kind.name(), kind.words()))));
        model.addAttribute(
                "owers",
                options("Choose", Arrays.stream(OwedBy.values()).map(who -> new Option(who.name(), who.words()))));
        model.addAttribute(
                "results",
                options(
                        "None",
                        Arrays.stream(WaitResult.values()).map(result -> new Option(result.name(), result.words()))));
        model.addAttribute(
                "papers",
                options(
                        "None",
                        book.papers(projectId).stream()
                                .map(paper -> new Option(
                                        paper.id().toString(),
                                        paper.caption().isEmpty() ? paper.name() : paper.caption()))));
        return "permit/wait";
    }

    private static List<Option> options(String none, Stream<Option> some) {
        return Stream.concat(Stream.of(new Option("", none)), some).toList();
    }
}
