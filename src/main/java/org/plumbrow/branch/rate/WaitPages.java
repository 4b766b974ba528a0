package org.plumbrow.branch.rate;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.Arrays;
import java.util.UUID;
import org.plumbrow.branch.Kept;
import org.plumbrow.branch.RateTables;
import org.plumbrow.branch.Saving;
import org.plumbrow.calc.duration.WaitTime;
import org.plumbrow.calc.duration.WaitTime.DayKind;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
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

/** How long others take: the table, and a page for each row. */
@Controller
class WaitPages {

    private static final String ALL = "/settings/waits";
    private static final String ONE = ALL + "/{waitCode}";

    private final RateTables tables;
    private final RateEditing editing;
    private final Access access;
    private final Saving saving;

    WaitPages(RateTables tables, RateEditing editing, Access access, Saving saving) {
        this.tables = tables;
        this.editing = editing;
        this.access = access;
        this.saving = saving;
    }

    @GetMapping(ALL)
    String list(Model model) {
        return RowSaving.list(tables.waits(access.require(May.CHANGE_SETTINGS).id()), "waits", model, "branch/waits");
    }

    @GetMapping(ONE)
    String show(@PathVariable String waitCode, Model model) {
        Kept<WaitTime> wait = of(waitCode);
        model.addAttribute("waitForm", WaitForm.of(wait));
        return page(wait, model);
    }

    @PostMapping(ONE)
    String change(
            @PathVariable String waitCode,
            @Valid @ModelAttribute("waitForm") WaitForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        Kept<WaitTime> wait = of(waitCode);
        return RowSaving.make(
                saving.of(errors, response, () -> page(wait, model)),
                form,
                () -> editing.changeWait(branchId, waitCode, form),
                () -> row(of(waitCode)),
                model,
                next);
    }

    private static RowSaving.Row row(Kept<WaitTime> wait) {
        return new RowSaving.Row(
                "this wait",
                ALL,
                wait.row().code(),
                wait.row().words(),
                wait.version(),
                WaitForm.of(wait).written());
    }

    private Kept<WaitTime> of(String code) {
        return tables.wait(access.require(May.CHANGE_SETTINGS).id(), code).orElseThrow(NotFound::new);
    }

    private static String page(Kept<WaitTime> wait, Model model) {
        model.addAttribute("wait", wait);
        model.addAttribute(
                "dayKinds",
                Arrays.stream(DayKind.values())
                        .map(kind -> new Option(kind.name(), kind.words()))
                        .toList());
        return "branch/wait";
    }
}
