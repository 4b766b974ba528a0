package org.plumbrow.branch.rate;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.util.UUID;
import org.plumbrow.branch.Kept;
import org.plumbrow.branch.RateTables;
import org.plumbrow.branch.Saving;
import org.plumbrow.calc.duration.WorkRate;
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

/** How much a crew does in a day: the table, and a page for each row. */
@Controller
class RatePages {

    private static final String ALL = "/settings/rates";
    private static final String ONE = ALL + "/{rateCode}";

    private final RateTables tables;
    private final RateEditing editing;
    private final Access access;
    private final Saving saving;

    RatePages(RateTables tables, RateEditing editing, Access access, Saving saving) {
        this.tables = tables;
        this.editing = editing;
        this.access = access;
        this.saving = saving;
    }

    @GetMapping(ALL)
    String list(Model model) {
        return RowSaving.list(tables.rates(access.require(May.CHANGE_SETTINGS).id()), "rates", model, "branch/rates");
    }

    @GetMapping(ONE)
    String show(@PathVariable String rateCode, Model model) {
        Kept<WorkRate> rate = of(rateCode);
        model.addAttribute("rateForm", RateForm.of(rate));
        return page(rate, model);
    }

    @PostMapping(ONE)
    String change(
            @PathVariable String rateCode,
            @Valid @ModelAttribute("rateForm") RateForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        Kept<WorkRate> rate = of(rateCode);
        return RowSaving.make(
                saving.of(errors, response, () -> page(rate, model)),
                form,
                () -> editing.changeRate(branchId, rateCode, form),
                () -> row(of(rateCode)),
                model,
                next);
    }

    private static RowSaving.Row row(Kept<WorkRate> rate) {
        return new RowSaving.Row(
                "this rate",
                ALL,
                rate.row().code(),
                rate.row().words(),
                rate.version(),
                RateForm.of(rate).written());
    }

    private Kept<WorkRate> of(String code) {
        return tables.rate(access.require(May.CHANGE_SETTINGS).id(), code).orElseThrow(NotFound::new);
    }

    private static String page(Kept<WorkRate> rate, Model model) {
        model.addAttribute("rate", rate);
        return "branch/rate";
    }
}
