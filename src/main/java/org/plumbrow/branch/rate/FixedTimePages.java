package org.plumbrow.branch.rate;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.UUID;
import org.plumbrow.branch.Kept;
import org.plumbrow.branch.RateTables;
import org.plumbrow.branch.Saving;
import org.plumbrow.calc.duration.FixedTime;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What takes its time whatever the size of the job: the table, and a page for each row. */
@Controller
class FixedTimePages {

    private static final String ALL = "/settings/fixed-times";
    private static final String ONE = ALL + "/{timeCode}";

    private final RateTables tables;
    private final RateEditing editing;
    private final Access access;
    private final Saving saving;

    FixedTimePages(RateTables tables, RateEditing editing, Access access, Saving saving) {
        this.tables = tables;
        this.editing = editing;
        this.access = access;
        this.saving = saving;
    }

    @GetMapping(ALL)
    String list(Model model) {
        return RowSaving.list(
                tables.fixedTimes(access.require(May.CHANGE_SETTINGS).id()), "times", model, "branch/fixed-times");
    }

    @GetMapping(ONE)
    String show(@PathVariable String timeCode, Model model) {
        Kept<FixedTime> time = of(timeCode);
        model.addAttribute("fixedTimeForm", FixedTimeForm.of(time));
        return page(time, model);
    }

    @PostMapping(ONE)
    String change(
            @PathVariable String timeCode,
            @Valid @ModelAttribute("fixedTimeForm") FixedTimeForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        Kept<FixedTime> time = of(timeCode);
        return RowSaving.make(
                saving.of(errors, response, () -> page(time, model)),
                form,
                () -> editing.changeFixedTime(branchId, timeCode, form),
                () -> row(of(timeCode)),
                model,
                next);
    }

    private static RowSaving.Row row(Kept<FixedTime> time) {
        return new RowSaving.Row(
                "this time",
                ALL,
                time.row().code(),
                time.row().words(),
                time.version(),
                FixedTimeForm.of(time).written());
    }

    private Kept<FixedTime> of(String code) {
        return tables.fixedTime(access.require(May.CHANGE_SETTINGS).id(), code).orElseThrow(NotFound::new);
    }

    private static String page(Kept<FixedTime> time, Model model) {
        model.addAttribute("time", time);
        return "branch/fixed-time";
    }
}
