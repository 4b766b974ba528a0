package org.plumbrow.estimate.site;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Saving;
import org.plumbrow.calc.energy.SkyModel;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Option;
import org.plumbrow.web.Words;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What a project's system makes in a year, how that is computed, and the best way to face. */
@Controller
class YieldPages {

    private static final int ORDER = 430;
    private static final double KM_PER_MILE = 1.609344;

    private final YieldReading reading;
    private final YieldEditing editing;
    private final Saving saving;
    private final Words words;

    YieldPages(YieldReading reading, YieldEditing editing, Saving saving, Words words) {
        this.reading = reading;
        this.editing = editing;
        this.saving = saving;
        this.words = words;
    }

    @Bean
    static ProjectPage yieldPage() {
        return new ProjectPage(ORDER, "estimate.yield.page", "/yield", May.SEE_ESTIMATE);
    }

    /** The hour to open; figures that are none are taken for the usual ones. */
    record HourForm(
            @Nullable String array,
            @Nullable String month,
            @Nullable String day,
            @Nullable String hour) {
        HourView.Choice choice() {
            return HourView.Choice.of(whole(array), whole(month), whole(day), whole(hour));
        }

        private static @Nullable Integer whole(@Nullable String typed) {
            return Entered.text(typed).matches("\\d{1,3}") ? Integer.valueOf(Entered.text(typed)) : null;
        }
    }

    @GetMapping("/projects/{projectId}/yield")
    String show(@PathVariable UUID projectId, @ModelAttribute("hourForm") HourForm hour, Model model) {
        YieldReading.Page page = reading.page(projectId, hour.choice());
        var facts = page.view().facts();
        model.addAttribute("sheet", page.title());
        model.addAttribute("view", page.view());
        model.addAttribute("kwh", facts == null ? "" : words.number(facts.kwh(), 0));
        model.addAttribute("monthOptions", months());
        return "estimate/yield";
    }

    private static List<Option> months() {
        return Arrays.stream(java.time.Month.values())
                .map(month -> new Option(String.valueOf(month.getValue()), MonthRow.name(month)))
                .toList();
    }

    @GetMapping("/projects/{projectId}/yield/terms")
    String terms(@PathVariable UUID projectId, Model model) {
        YieldReading.Terms terms = reading.terms(projectId);
        model.addAttribute("yieldForm", YieldForm.of(terms.kept()));
        return page(terms, model);
    }

    private String page(YieldReading.Terms terms, Model model) {
        model.addAttribute("sheet", terms.title());
        model.addAttribute("arrays", terms.arrays());
        model.addAttribute("weatherOptions", weather(terms.offered()));
        model.addAttribute(
                "skies",
                Arrays.stream(SkyModel.values())
                        .map(sky -> new Option(sky.name(), sky.words()))
                        .toList());
        model.addAttribute(
                "monthNames",
                Arrays.stream(java.time.Month.values()).map(MonthRow::name).toList());
        return "estimate/yield-terms";
    }

    private List<Option> weather(List<EstimateSource.Offer> offered) {
        List<Option> options = new ArrayList<>();
        options.add(new Option("", "The nearest of the library"));
        for (EstimateSource.Offer offer : offered) {
            Double km = offer.km();
            String far = km == null ? "" : ", %s miles away".formatted(words.number(km / KM_PER_MILE, 0));
            String invented = offer.card().invented() ? ", invented" : "";
            options.add(new Option(
                    offer.card().id().toString(),
                    offer.card().name() + " (" + offer.card().kind() + invented + far + ")"));
        }
        return options;
    }

    @PostMapping("/projects/{projectId}/yield/terms")
    String change(
            @PathVariable UUID projectId,
            @ModelAttribute("yieldForm") YieldForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        YieldReading.Terms before = reading.terms(projectId);
        Entered entered = new Entered(errors);
        UUID weatherId = form.weather(entered);
        YieldTerms terms = form.read(entered);
        return saving.of(errors, response, () -> page(before, model))
                .make(
                        () -> editing.change(projectId, Entered.version(form.version()), weatherId, terms),
                        () -> {
                            Flash.done(next, "Saved, and the yield is computed with it.");
                            return "redirect:/projects/{projectId}/yield";
                        },
                        model,
                        form::written,
                        () -> theirs(projectId));
    }

    private Saving.Theirs theirs(UUID projectId) {
        YieldRows.Kept now = reading.terms(projectId).kept();
        return new Saving.Theirs(
                "how this yield is computed",
                "/projects/" + projectId + "/yield/terms",
                now.version(),
                YieldForm.of(now).written());
    }

    /** Everything may be left out. */
    record OrientationForm(
            @Nullable String array,
            @Nullable String rowFt,
            @Nullable String freeHours) {
        OrientationForm {
            rowFt = rowFt == null ? Entered.written(OrientationView.Choice.USUAL_ROW_FT) : rowFt;
            freeHours = freeHours == null ? Entered.written(OrientationView.Choice.USUAL_FREE_HOURS) : freeHours;
        }

        OrientationView.Choice read(Entered entered) {
            String number = Entered.text(array);
            return new OrientationView.Choice(
                    number.matches("\\d{1,3}") ? Integer.parseInt(number) : 0,
                    entered.required("rowFt", "the height of a row along its slope", rowFt, OrientationView.ROW_FT),
                    entered.required("freeHours", "the hours without shade", freeHours, OrientationView.FREE_HOURS));
        }
    }

    @GetMapping("/projects/{projectId}/yield/orientation")
    String orientation(
            @PathVariable UUID projectId,
            @ModelAttribute("orientationForm") OrientationForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        OrientationView.Choice choice = form.read(new Entered(errors));
        YieldReading.Orientation page =
                reading.orientation(projectId, errors.hasErrors() ? OrientationView.Choice.usual() : choice);
        if (errors.hasErrors()) {
            response.setStatus(422);
        }
        model.addAttribute("sheet", page.title());
        model.addAttribute("missing", page.missing());
        model.addAttribute("view", page.view());
        OrientationView view = page.view();
        if (view != null) {
            answer(view, model);
        }
        return "estimate/orientation";
    }

    private void answer(OrientationView view, Model model) {
        model.addAttribute("share", words.number(Math.floor(1000 * (1 - view.ownShare()) + 0.5) / 10, 1));
        List<Option> arrays = new ArrayList<>();
        for (int at = 0; at < view.arrays().size(); at++) {
            arrays.add(new Option(String.valueOf(at), view.arrays().get(at)));
        }
        model.addAttribute("arrayOptions", arrays);
    }
}
