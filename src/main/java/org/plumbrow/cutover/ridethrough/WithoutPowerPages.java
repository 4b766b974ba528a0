package org.plumbrow.cutover.ridethrough;

import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.plumbrow.branch.Saving;
import org.plumbrow.design.part.Cells;
import org.plumbrow.design.part.Col;
import org.plumbrow.design.part.PartForm;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Option;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** How long a site stands without power, and writing down what is on it. */
@Controller
class WithoutPowerPages {

    private static final int ORDER = 490;

    private final WithoutPowerReading reading;
    private final SiteLoads loads;
    private final Saving saving;

    WithoutPowerPages(WithoutPowerReading reading, SiteLoads loads, Saving saving) {
        this.reading = reading;
        this.loads = loads;
        this.saving = saving;
    }

    @Bean
    static ProjectPage withoutPowerPage() {
        return new ProjectPage(ORDER, "cutover.page.without", "/without-power", May.SEE_CUTOVERS);
    }

    @GetMapping("/projects/{projectId}/without-power")
    String withoutPower(
            @PathVariable UUID projectId,
            @ModelAttribute("hourForm") HourForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response) {
        HourForm.Hour usual = reading.usualHour(projectId);
        HourForm.Hour hour = form.read(usual, errors);
        if (errors.hasErrors()) {
            response.setStatus(422);
        } else if (form.day() == null) {
            model.addAttribute("hourForm", HourForm.of(usual));
        }
        model.addAttribute("view", reading.at(projectId, hour));
        return "cutover/without-power";
    }

    @GetMapping("/projects/{projectId}/without-power/{loadKind}")
    String write(@PathVariable UUID projectId, @PathVariable String loadKind, Model model) {
        LoadKind kind = LoadKind.of(loadKind).orElseThrow(NotFound::new);
        WithoutPowerReading.Writing writing = reading.writing(projectId, kind);
        OnSite.Kept kept = writing.kept();
        model.addAttribute("form", PartForm.of(kept.rows(), kind.cols(), kind.isRepeated(), kept.version()));
        return again(writing, kind, model);
    }

    private static String again(WithoutPowerReading.Writing writing, LoadKind kind, Model model) {
        model.addAttribute("sheet", writing);
        model.addAttribute("kind", kind);
        model.addAttribute("cols", kind.cols());
        model.addAttribute("offers", new Offered());
        return "cutover/without-power-kind";
    }

    /** For the template: choices of a field with an empty one first. */
    static final class Offered {
        public List<Option> of(Col col) {
            List<Option> all = new ArrayList<>();
            all.add(new Option("", col.needed() ? "Choose" : "\u2013"));
            all.addAll(col.options());
            return all;
        }

        /** What tells a row from others, beside its name. */
        public String words(List<Col> cols, PartForm.Row row) {
            return PartForm.summary(row, cols, Col::options);
        }
    }

    @PostMapping("/projects/{projectId}/without-power/{loadKind}")
    String write(
            @PathVariable UUID projectId,
            @PathVariable String loadKind,
            @ModelAttribute("form") PartForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        LoadKind kind = LoadKind.of(loadKind).orElseThrow(NotFound::new);
        List<Cells> read = form.read(kind.cols(), Col::options, errors);
        String address = "/projects/" + projectId + "/without-power/" + kind.slug();
        return saving.of(errors, response, () -> again(reading.writing(projectId, kind), kind, model))
                .make(
                        () -> loads.keep(projectId, kind, form.version(), read),
                        () -> {
                            Flash.done(next, kind.title() + ": saved.");
                            return "redirect:/projects/{projectId}/without-power";
                        },
                        model,
                        () -> PartForm.written(read, kind.cols(), Col::options),
                        () -> theirs(projectId, kind, address));
    }

    private Saving.Theirs theirs(UUID projectId, LoadKind kind, String address) {
        OnSite.Kept now = reading.writing(projectId, kind).kept();
        return new Saving.Theirs(
                "“" + kind.title() + "” of this site",
                address,
                now.version(),
                PartForm.written(now.rows(), kind.cols(), Col::options));
    }
}
