package org.plumbrow.project.edit;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.Written;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.web.Flash;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/**
 * How a form of a project is answered: changed, or refused with 422 and every typed word kept, or with 409 and theirs
 * beside yours.
 */
@Component
class Editing {

    private final ProjectTitles titles;
    private final Saving saving;

    Editing(ProjectTitles titles, Saving saving) {
        this.titles = titles;
        this.saving = saving;
    }

    /**
     * One posted form.
     *
     * @param page the view that shows the form again
     * @param done address to go to when it is changed
     */
    record Posted(
            UUID projectId,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next,
            String page,
            String done) {}

    /** For the form of a project, seen the first time or again. */
    String page(UUID projectId, Model model, String view) {
        model.addAttribute("sheet", titles.of(projectId));
        return view;
    }

    /**
     * @param read what was typed, its faults put at their fields
     * @param change makes the change; answers with the journal line, or nothing when nothing was different
     */
    <T> String answer(
            Posted posted,
            Supplier<T> read,
            Function<T, Optional<Integer>> change,
            Supplier<Saving.Theirs> theirs,
            Supplier<List<Written>> yours) {
        T typed = read.get();
        List<Optional<Integer>> lines = new ArrayList<>();
        return saving.of(posted.errors, posted.response, () -> page(posted.projectId, posted.model, posted.page))
                .make(
                        () -> {
                            lines.add(change.apply(typed));
                            return Optional.empty();
                        },
                        () -> saved(posted, lines.get(0)),
                        posted.model,
                        yours,
                        theirs);
    }

    private static String saved(Posted posted, Optional<Integer> line) {
        Flash.done(posted.next, line.isPresent() ? "Saved. The journal says what changed." : "Nothing was different.");
        return "redirect:" + posted.done;
    }
}
