package org.plumbrow.schedule.crewweek;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Saving;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.evidence.Upload;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.Option;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The daily report of a crew at a project. */
@Controller
@RequestMapping("/crews/{crewId}/reports/{projectId}/{reportDay}")
class ReportPages {

    private final DailyReports reports;
    private final Saving saving;

    ReportPages(DailyReports reports, Saving saving) {
        this.reports = reports;
        this.saving = saving;
    }

    @GetMapping
    String show(
            @PathVariable UUID crewId,
            @PathVariable UUID projectId,
            @PathVariable @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate reportDay,
            Model model) {
        ReportSheet sheet = reports.sheet(crewId, projectId, reportDay);
        model.addAttribute("report", form(sheet));
        return page(sheet, model);
    }

    @PostMapping
    String save(
            @PathVariable UUID crewId,
            @PathVariable UUID projectId,
            @PathVariable @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate reportDay,
            @ModelAttribute("report") ReportForm form,
            BindingResult errors,
            @RequestParam(name = "photos", required = false) @Nullable List<MultipartFile> photos,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        ReportSheet sheet = reports.sheet(crewId, projectId, reportDay);
        DailyReport report = form.read(new Entered(errors), sheet);
        return saving.of(errors, response, () -> page(sheet, model))
                .make(
                        () -> reports.save(sheet, report, uploads(photos, reportDay)),
                        () -> {
                            Flash.done(next, "The report is kept. The plan is computed anew.");
                            return "redirect:" + sheet.address();
                        },
                        model,
                        () -> form.written(sheet),
                        () -> theirs(reports.sheet(crewId, projectId, reportDay)));
    }

    private Saving.Theirs theirs(ReportSheet now) {
        return new Saving.Theirs(
                "this report", now.address(), now.version(), form(now).written(now));
    }

    ReportForm form(ReportSheet sheet) {
        return ReportForm.of(sheet, reports.usualHours(sheet.crew().branchId()));
    }

    /** Without a chosen file a browser sends one without a name. */
    private static List<Upload> uploads(@Nullable List<MultipartFile> photos, LocalDate day) {
        return photos == null
                ? List.of()
                : photos.stream()
                        .filter(photo -> !photo.isEmpty())
                        .map(photo -> upload(photo, day))
                        .toList();
    }

    static Upload upload(MultipartFile photo, LocalDate day) {
        return Upload.of(photo, "Daily report, " + DayWords.withYear(day));
    }

    private static String page(ReportSheet sheet, Model model) {
        model.addAttribute("sheet", sheet);
        model.addAttribute(
                "weathers",
                Arrays.stream(DayWeather.values())
                        .map(weather -> new Option(weather.name(), weather.words()))
                        .toList());
        model.addAttribute("limits", ReportForm.limits());
        model.addAttribute("states", List.of(new Option("", "goes on"), new Option("DONE", "finished")));
        return "schedule/daily-report";
    }
}
