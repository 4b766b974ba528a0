package org.plumbrow.branch.weather;

import jakarta.servlet.http.HttpServletResponse;
import jakarta.validation.Valid;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.WeatherFamily;
import org.plumbrow.branch.WeatherTable;
import org.plumbrow.web.Access;
import org.plumbrow.web.Flash;
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

/** Half-days that rain, snow and mud take: the table of the year, and a page for each family of work. */
@Controller
class WeatherPages {

    private static final String ALL = "/settings/weather";
    private static final String ONE = ALL + "/{weatherFamily}";

    private final BranchSettings settings;
    private final WeatherEditing editing;
    private final Access access;
    private final Saving saving;

    WeatherPages(BranchSettings settings, WeatherEditing editing, Access access, Saving saving) {
        this.settings = settings;
        this.editing = editing;
        this.access = access;
        this.saving = saving;
    }

    /** A month of the table. @param lost in the order of the families */
    record MonthRow(String month, List<Double> lost) {}

    /** A field of the form: what it is called there, and the month. */
    record MonthField(String name, String month) {}

    /** A family of work with its address. */
    record FamilyLink(String words, String href, double year) {}

    @GetMapping(ALL)
    String list(Model model) {
        WeatherTable table =
                settings.weather(access.require(May.CHANGE_SETTINGS).id());
        model.addAttribute(
                "families",
                Arrays.stream(WeatherFamily.values())
                        .map(family -> new FamilyLink(family.words(), address(family), year(table, family)))
                        .toList());
        model.addAttribute(
                "months",
                Arrays.stream(Month.values())
                        .map(month -> new MonthRow(
                                name(month),
                                Arrays.stream(WeatherFamily.values())
                                        .map(family -> table.lostHalfDays(family, month))
                                        .toList()))
                        .toList());
        model.addAttribute("none", Arrays.stream(WeatherFamily.values()).allMatch(family -> year(table, family) == 0));
        return "branch/weather";
    }

    @GetMapping(ONE)
    String show(@PathVariable String weatherFamily, Model model) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        WeatherFamily family = family(weatherFamily);
        model.addAttribute("lostDaysForm", LostDaysForm.of(settings.weather(branchId), family));
        return page(family, model);
    }

    @PostMapping(ONE)
    String change(
            @PathVariable String weatherFamily,
            @Valid @ModelAttribute("lostDaysForm") LostDaysForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.CHANGE_SETTINGS).id();
        WeatherFamily family = family(weatherFamily);
        return saving.of(errors, response, () -> page(family, model))
                .make(
                        () -> {
                            editing.change(branchId, family, form.version(), form.lost());
                            return Optional.empty();
                        },
                        () -> {
                            Flash.done(next, "Saved: " + family.words().toLowerCase(Locale.ROOT) + ".");
                            return "redirect:" + ALL;
                        },
                        model,
                        () -> LostDaysForm.written(form.lost()),
                        () -> theirs(family, settings.weather(branchId)));
    }

    private static Saving.Theirs theirs(WeatherFamily family, WeatherTable table) {
        return new Saving.Theirs(
                "these half-days",
                address(family),
                table.version(family),
                LostDaysForm.written(WeatherEditing.lost(table, family)));
    }

    private static String page(WeatherFamily family, Model model) {
        model.addAttribute("familyWords", family.words());
        model.addAttribute("action", address(family));
        model.addAttribute(
                "monthFields",
                Arrays.stream(Month.values())
                        .map(month -> new MonthField(LostDaysForm.field(month), name(month)))
                        .toList());
        return "branch/weather-family";
    }

    private static double year(WeatherTable table, WeatherFamily family) {
        return Arrays.stream(Month.values())
                .mapToDouble(month -> table.lostHalfDays(family, month))
                .sum();
    }

    private static String name(Month month) {
        return month.getDisplayName(TextStyle.FULL, Locale.US);
    }

    private static String address(WeatherFamily family) {
        return ALL + "/" + family.name().toLowerCase(Locale.ROOT);
    }

    private static WeatherFamily family(String name) {
        return Arrays.stream(WeatherFamily.values())
                .filter(family -> family.name().toLowerCase(Locale.ROOT).equals(name))
                .findFirst()
                .orElseThrow(NotFound::new);
    }
}
