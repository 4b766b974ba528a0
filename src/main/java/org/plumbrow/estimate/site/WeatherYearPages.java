package org.plumbrow.estimate.site;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.Saving;
import org.plumbrow.calc.Range;
import org.plumbrow.calc.energy.weather.MonthlyMeans;
import org.plumbrow.estimate.site.WeatherForms.FileForm;
import org.plumbrow.estimate.site.WeatherForms.MeansForm;
import org.plumbrow.estimate.site.WeatherForms.NameForm;
import org.plumbrow.evidence.Upload;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Place;
import org.plumbrow.web.Words;
import org.springframework.context.annotation.Bean;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The branch's typical years: the list, a file brought, twelve means typed, and each year's own page. */
@Controller
class WeatherYearPages {

    private static final int ORDER = 12;

    private final WeatherLibrary library;
    private final BranchSettings settings;
    private final Access access;
    private final Saving saving;
    private final Words words;
    private final Clock clock;

    WeatherYearPages(
            WeatherLibrary library, BranchSettings settings, Access access, Saving saving, Words words, Clock clock) {
        this.library = library;
        this.settings = settings;
        this.access = access;
        this.saving = saving;
        this.words = words;
        this.clock = clock;
    }

    @Bean
    static Place weatherLibraryPlace() {
        return Place.underOwnName(ORDER, "estimate.weather.place", "/weather", May.SEE_ESTIMATE);
    }

    @GetMapping("/weather")
    String all(Model model) {
        BranchCard branch = access.require(May.SEE_ESTIMATE);
        model.addAttribute("years", library.ofBranch(branch.id()));
        return "estimate/weather-years";
    }

    @GetMapping("/weather/file")
    String chooseFile(Model model) {
        access.require(May.EDIT_PROJECT);
        model.addAttribute("fileForm", new FileForm("", "false"));
        return "estimate/weather-file";
    }

    @PostMapping("/weather/file")
    String bring(
            @ModelAttribute("fileForm") FileForm form,
            BindingResult errors,
            @RequestParam(name = "file", required = false) @Nullable MultipartFile file,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        BranchCard branch = access.require(May.EDIT_PROJECT);
        UUID[] kept = new UUID[1];
        return saving.of(errors, response, () -> "estimate/weather-file")
                .refusedAt("name")
                .make(
                        () -> {
                            kept[0] = bring(branch, form, file, model, errors);
                            return Optional.empty();
                        },
                        () -> {
                            Flash.done(next, "The file was read and is in the library. Look at what it holds.");
                            return "redirect:/weather/" + kept[0];
                        });
    }

    private @Nullable UUID bring(
            BranchCard branch, FileForm form, @Nullable MultipartFile file, Model model, BindingResult errors) {
        List<String> wrong = List.of("Choose the file first.");
        if (file != null && !file.isEmpty()) {
            boolean invented = WeatherForms.yes(form.invented());
            var brought = library.bring(branch.id(), Upload.of(file, ""), Entered.text(form.name()), invented);
            if (brought instanceof WeatherLibrary.Bringing.Kept kept) {
                return kept.id();
            }
            wrong = ((WeatherLibrary.Bringing.Refused) brought).sentences();
        }
        model.addAttribute("fileWrong", wrong);
        wrong.forEach(sentence -> errors.reject("refused", sentence));
        return null;
    }

    @GetMapping("/weather/means")
    String typeMeans(Model model) {
        UUID branchId = access.require(May.EDIT_PROJECT).id();
        model.addAttribute("meansForm", MeansForm.blank(settings.facts(branchId), clock.instant()));
        return means(model);
    }

    private static String means(Model model) {
        model.addAttribute("monthNames", monthNames());
        return "estimate/weather-means";
    }

    private static List<String> monthNames() {
        return List.of(java.time.Month.values()).stream().map(MonthRow::name).toList();
    }

    @PostMapping("/weather/means")
    String means(
            @ModelAttribute("meansForm") MeansForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID branchId = access.require(May.EDIT_PROJECT).id();
        Entered entered = new Entered(errors);
        String name = form.nameIn(entered);
        MonthlyMeans read = form.read(entered);
        UUID[] kept = new UUID[1];
        return saving.of(errors, response, () -> means(model))
                .refusedAt("name")
                .make(
                        () -> {
                            kept[0] = type(branchId, name, form, read, entered);
                            return Optional.empty();
                        },
                        () -> {
                            Flash.done(next, "A typical year was made from these means. Look at what it holds.");
                            return "redirect:/weather/" + kept[0];
                        });
    }

    private @Nullable UUID type(UUID branchId, String name, MeansForm form, MonthlyMeans means, Entered entered) {
        try {
            return library.type(branchId, name, WeatherForms.yes(form.invented()), means);
        } catch (Range.OutOfRange sunnier) {
            int month = Integer.parseInt(sunnier.quantity().replaceAll("\\D", ""));
            entered.refuse(
                    "months[%d].ghi".formatted(month - 1),
                    "%.2f kWh/m² a day is more than the sun sends there in that month (%.2f at most)."
                            .formatted(sunnier.value(), sunnier.range().most()));
            return null;
        }
    }

    @GetMapping("/weather/{weatherId}")
    String one(@PathVariable UUID weatherId, Model model) {
        WeatherCard card = library.card(weatherId);
        model.addAttribute("nameForm", NameForm.of(card));
        return page(card, model);
    }

    private String page(WeatherCard card, Model model) {
        model.addAttribute("card", card);
        model.addAttribute("sun", words.number(card.summary().ghiKwhPerM2(), 0));
        model.addAttribute("months", MonthRow.of(card.summary().ghiByMonth()));
        model.addAttribute("chosenBy", library.projectsThatChose(card.id()));
        return "estimate/weather-year";
    }

    @PostMapping("/weather/{weatherId}")
    String rename(
            @PathVariable UUID weatherId,
            @ModelAttribute("nameForm") NameForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        access.require(library.card(weatherId).branchId(), May.EDIT_PROJECT);
        String name = form.nameIn(new Entered(errors));
        boolean invented = WeatherForms.yes(form.invented());
        return saving.of(errors, response, () -> page(library.card(weatherId), model))
                .refusedAt("name")
                .make(
                        () -> {
                            library.rename(weatherId, Entered.version(form.version()), name, invented);
                            return Optional.empty();
                        },
                        () -> {
                            Flash.done(next, "Saved.");
                            return "redirect:/weather/" + weatherId;
                        },
                        model,
                        () -> WeatherForms.written(name, invented),
                        () -> theirs(library.card(weatherId)));
    }

    private static Saving.Theirs theirs(WeatherCard card) {
        return new Saving.Theirs(
                "this weather",
                "/weather/" + card.id(),
                card.version(),
                WeatherForms.written(card.name(), card.invented()));
    }

    @PostMapping("/weather/{weatherId}/end")
    String end(@PathVariable UUID weatherId, RedirectAttributes next) {
        library.end(weatherId);
        Flash.doneWithUndo(
                next,
                "No longer offered for projects. Those that chose it keep it.",
                "/weather/" + weatherId + "/offer");
        return "redirect:/weather/" + weatherId;
    }

    @PostMapping("/weather/{weatherId}/offer")
    String offer(@PathVariable UUID weatherId, RedirectAttributes next) {
        library.offerAgain(weatherId);
        Flash.done(next, "Offered for projects again.");
        return "redirect:/weather/" + weatherId;
    }
}
