package org.plumbrow.project.edit;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.plumbrow.branch.Written;
import org.plumbrow.project.ProjectTitles;
import org.plumbrow.web.Conflict;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Flash;
import org.springframework.dao.OptimisticLockingFailureException;
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

    Editing(ProjectTitles titles) {
        this.titles = titles;
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

    /** What is stored by now. @param thing as the sentence's object: "the site" */
    record Theirs(String thing, String action, long version, List<Written> fields) {}

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
            Supplier<Theirs> theirs,
            Supplier<List<Written>> yours) {
        T typed = read.get();
        if (posted.errors.hasErrors()) {
            posted.response.setStatus(422);
            return page(posted.projectId, posted.model, posted.page);
        }
        try {
            Optional<Integer> line = change.apply(typed);
            Flash.done(
                    posted.next, line.isPresent() ? "Saved. The journal says what changed." : "Nothing was different.");
            return "redirect:" + posted.done;
        } catch (EditedMeanwhile | OptimisticLockingFailureException newer) {
            posted.response.setStatus(409);
            Theirs stored = theirs.get();
            return new Conflict(stored.thing, stored.action, stored.version, beside(stored.fields, yours.get()))
                    .show(posted.model);
        }
    }

    /** Every field of either side; a row that only one side has is empty on the other. */
    private static List<Conflict.Row> beside(List<Written> theirs, List<Written> yours) {
        var theirsByName = theirs.stream().collect(Collectors.toMap(Written::name, Function.identity(), (a, b) -> a));
        var yoursByName = yours.stream().collect(Collectors.toMap(Written::name, Function.identity(), (a, b) -> a));
        Set<String> names = new TreeSet<>(theirsByName.keySet());
        names.addAll(yoursByName.keySet());
        List<Conflict.Row> rows = new ArrayList<>();
        for (String name : names) {
            Written their = theirsByName.get(name);
            Written your = yoursByName.get(name);
            Written any = their == null ? your : their;
            rows.add(new Conflict.Row(
                    any.label(),
                    name,
                    their == null ? "" : their.value(),
                    your == null ? "" : your.value(),
                    their == null ? "–" : their.words(),
                    your == null ? "–" : your.words()));
        }
        return rows;
    }

    /** The version as the form carried it; one that no thing has where it did not. */
    static long version(@org.jspecify.annotations.Nullable String carried) {
        try {
            return Long.parseLong(Entered.text(carried));
        } catch (NumberFormatException missing) {
            return -1;
        }
    }
}
