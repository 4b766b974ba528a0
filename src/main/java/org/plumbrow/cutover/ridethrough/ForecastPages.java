package org.plumbrow.cutover.ridethrough;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.Written;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.Projects;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** A weather forecast for a site, pasted or from a file. */
@Controller
class ForecastPages {

    private final Forecasts forecasts;
    private final Projects projects;
    private final ProjectAccess projectAccess;
    private final Saving saving;

    ForecastPages(Forecasts forecasts, Projects projects, ProjectAccess projectAccess, Saving saving) {
        this.forecasts = forecasts;
        this.projects = projects;
        this.projectAccess = projectAccess;
        this.saving = saving;
    }

    record ForecastForm(@Nullable String text, @Nullable String version) {

        /** What is in the file takes the place of what stood in the field. */
        ForecastForm with(@Nullable MultipartFile file) throws IOException {
            return file == null || file.isEmpty()
                    ? this
                    : new ForecastForm(
                            new String(file.getBytes(), StandardCharsets.UTF_8).replace("\uFEFF", ""), version);
        }
    }

    @GetMapping("/projects/{projectId}/outage/forecast")
    String forecast(@PathVariable UUID projectId, Model model) {
        projectAccess.require(projectId, May.BOOK_OUTAGE);
        Forecasts.Kept kept = forecasts.of(projectId);
        model.addAttribute("forecastForm", new ForecastForm(kept.text(), Long.toString(kept.version())));
        return page(projectId, model);
    }

    private String page(UUID projectId, Model model) {
        model.addAttribute("sheet", new Sheet(projects.facts(projectId)));
        return "cutover/forecast";
    }

    /** For the way back. */
    record Sheet(org.plumbrow.project.ProjectFacts project) {}

    @PostMapping("/projects/{projectId}/outage/forecast")
    String forecast(
            @PathVariable UUID projectId,
            @ModelAttribute("forecastForm") ForecastForm typed,
            @RequestParam(name = "file", required = false) @Nullable MultipartFile file,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next)
            throws IOException {
        ForecastForm form = typed.with(file);
        BindingResult errors = new BeanPropertyBindingResult(form, "forecastForm");
        model.addAttribute("forecastForm", form);
        model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "forecastForm", errors);
        String text = Entered.text(form.text());
        return saving.of(errors, response, () -> page(projectId, model))
                .make(
                        () -> forecasts.keep(projectId, text, Entered.version(form.version())),
                        () -> {
                            Flash.done(next, "The forecast is kept; its hours go before the typical ones.");
                            return "redirect:/projects/{projectId}/outage/hours";
                        },
                        model,
                        () -> List.of(Written.of("Forecast", "text", text)),
                        () -> theirs(projectId));
    }

    private Saving.Theirs theirs(UUID projectId) {
        Forecasts.Kept kept = forecasts.of(projectId);
        return new Saving.Theirs(
                "the forecast of this site",
                "/projects/" + projectId + "/outage/forecast",
                kept.version(),
                List.of(Written.of("Forecast", "text", kept.text())));
    }
}
