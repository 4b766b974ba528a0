package org.plumbrow.branch.rate;

import java.util.List;
import java.util.function.Supplier;
import org.plumbrow.branch.Kept;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.Written;
import org.plumbrow.web.Flash;
import org.springframework.ui.Model;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** How the form of a rate, a fixed time or a wait is answered, and how the table of them is shown: the same for all three. */
final class RowSaving {

    private RowSaving() {}

    /** @param name of the rows in the view */
    static String list(List<? extends Kept<?>> rows, String name, Model model, String view) {
        model.addAttribute(name, rows);
        model.addAttribute("changed", rows.stream().filter(Kept::changed).count());
        return view;
    }

    /**
     * One row of a table.
     *
     * @param thing as a sentence's object: "this rate"
     * @param table the address of all rows
     * @param stored the row's fields as they lie in the database now
     */
    record Row(String thing, String table, String code, String words, long version, List<Written> stored) {

        private Saving.Theirs theirs() {
            return new Saving.Theirs(thing, table + "/" + code, version, stored);
        }
    }

    /** @param row read when it is asked for: anew where somebody else was faster */
    static String make(
            Saving.Answer answer,
            RowForm form,
            Runnable change,
            Supplier<Row> row,
            Model model,
            RedirectAttributes next) {
        Row before = row.get();
        return answer.make(
                () -> {
                    var wrong = form.wrong();
                    if (wrong.isEmpty()) {
                        change.run();
                    }
                    return wrong;
                },
                () -> {
                    Flash.done(next, "Saved: " + before.words + ". The plan is computed anew with it.");
                    return "redirect:" + before.table;
                },
                model,
                form::written,
                () -> row.get().theirs());
    }
}
