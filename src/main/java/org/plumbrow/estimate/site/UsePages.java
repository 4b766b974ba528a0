package org.plumbrow.estimate.site;

import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Saving;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
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

/** What a project's site uses: the season beside production, the meters, and how use is brought. */
@Controller
class UsePages {

    private static final int ORDER = 420;
    private static final String HERE = "/projects/{projectId}/use";
    private static final String METER = "/use-meters/{meterId}";

    private final UseReadingDesk desk;
    private final UseBook book;
    private final Saving saving;
    private final Words words;

    UsePages(UseReadingDesk desk, UseBook book, Saving saving, Words words) {
        this.desk = desk;
        this.book = book;
        this.saving = saving;
        this.words = words;
    }

    @Bean
    static ProjectPage usePage() {
        return new ProjectPage(ORDER, "estimate.use.page", "/use", May.SEE_ESTIMATE);
    }

    @GetMapping(HERE)
    String show(@PathVariable UUID projectId, Model model) {
        UseReadingDesk.Page page = desk.page(projectId);
        Double kwh = page.view().kwh();
        model.addAttribute("sheet", page.title());
        model.addAttribute("view", page.view());
        model.addAttribute("estimate", page.estimate());
        model.addAttribute("kwh", kwh == null ? "" : words.number(kwh, 0));
        return "estimate/use";
    }

    /** @param name of the meter @param pasted rows in place of a file @param wattHours "true" when said so */
    record UseFileForm(
            @Nullable String name,
            @Nullable String pasted,
            @Nullable String wattHours) {}

    @GetMapping(HERE + "/file")
    String chooseFile(@PathVariable UUID projectId, Model model) {
        model.addAttribute("useFileForm", new UseFileForm("", "", "false"));
        return filePage(projectId, model);
    }

    private String filePage(UUID projectId, Model model) {
        model.addAttribute("sheet", desk.sheet(projectId, May.EDIT_PROJECT).title());
        return "estimate/use-file";
    }

    @PostMapping(HERE + "/file")
    String bring(
            @PathVariable UUID projectId,
            @ModelAttribute("useFileForm") UseFileForm form,
            BindingResult errors,
            @RequestParam(name = "file", required = false) @Nullable MultipartFile file,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        desk.sheet(projectId, May.EDIT_PROJECT);
        String name = new Entered(errors).given("name", "what this meter is called: House, Barn 2", form.name(), 80);
        UUID[] kept = new UUID[1];
        return saving.of(errors, response, () -> filePage(projectId, model))
                .refusedAt("name")
                .make(
                        () -> {
                            kept[0] = bring(projectId, name, form, file, model, errors);
                            return Optional.empty();
                        },
                        () -> {
                            Flash.done(next, "The readings are read. Look at them, then let them count.");
                            return "redirect:/use-meters/" + kept[0];
                        });
    }

    private @Nullable UUID bring(
            UUID projectId,
            String name,
            UseFileForm form,
            @Nullable MultipartFile file,
            Model model,
            BindingResult errors) {
        Optional<Upload> upload = upload(form, file);
        if (upload.isEmpty()) {
            return refuse("Choose a file, or paste the rows.", List.of(), model, errors);
        }
        var brought = book.bring(projectId, name, upload.get(), WeatherForms.yes(form.wattHours()));
        if (brought instanceof UseBook.Bringing.Kept kept) {
            return kept.meterId();
        }
        UseBook.Bringing.Refused no = (UseBook.Bringing.Refused) brought;
        return refuse(no.sentence(), no.preview(), model, errors);
    }

    private static Optional<Upload> upload(UseFileForm form, @Nullable MultipartFile file) {
        if (file != null && !file.isEmpty()) {
            return Optional.of(Upload.of(file, ""));
        }
        String pasted = Entered.text(form.pasted());
        return pasted.isEmpty()
                ? Optional.empty()
                : Optional.of(new Upload("pasted.csv", pasted.getBytes(StandardCharsets.UTF_8), ""));
    }

    private static @Nullable UUID refuse(
            String sentence, List<List<String>> preview, Model model, BindingResult errors) {
        model.addAttribute("fileWrong", sentence);
        model.addAttribute("preview", preview);
        errors.reject("refused", sentence);
        return null;
    }

    @GetMapping(HERE + "/typed")
    String type(
            @PathVariable UUID projectId,
            @RequestParam(name = "first", required = false) @Nullable String first,
            @RequestParam(name = "count", required = false) @Nullable String count,
            Model model) {
        int rows = Entered.text(count).matches("\\d{1,2}") ? Integer.parseInt(Entered.text(count)) : 12;
        return typedPage(projectId, TypedForm.blank(words.today(), first, rows), null, model);
    }

    private String typedPage(UUID projectId, @Nullable TypedForm form, @Nullable UUID meterId, Model model) {
        model.addAttribute("sheet", desk.sheet(projectId, May.EDIT_PROJECT).title());
        if (form != null) {
            model.addAttribute("typedForm", form);
        }
        TypedForm shown = (TypedForm) java.util.Objects.requireNonNull(model.getAttribute("typedForm"));
        model.addAttribute("labels", shown.labels());
        model.addAttribute("meterId", meterId);
        model.addAttribute(
                "action",
                meterId == null ? "/projects/" + projectId + "/use/typed" : "/use-meters/" + meterId + "/typed");
        return "estimate/use-typed";
    }

    @PostMapping(HERE + "/typed")
    String type(
            @PathVariable UUID projectId,
            @ModelAttribute("typedForm") TypedForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        desk.sheet(projectId, May.EDIT_PROJECT);
        Entered entered = new Entered(errors);
        String name = form.nameIn(entered);
        UseMeter.TypedUse read = form.read(entered);
        return saving.of(errors, response, () -> typedPage(projectId, null, null, model))
                .refusedAt("name")
                .make(
                        () -> {
                            book.type(projectId, name, read.firstMonth(), read.kwh());
                            return Optional.empty();
                        },
                        () -> {
                            Flash.done(next, "The use of " + name + " counts.");
                            return "redirect:/projects/{projectId}/use";
                        });
    }

    @GetMapping(METER)
    String meter(@PathVariable UUID meterId, Model model) {
        UseMeter meter = book.one(meterId);
        model.addAttribute("meter", meter);
        model.addAttribute(
                "sheet", desk.sheet(meter.projectId(), May.SEE_ESTIMATE).title());
        return "estimate/use-meter";
    }

    @GetMapping(METER + "/typed")
    String correct(@PathVariable UUID meterId, Model model) {
        UseMeter meter = typedMeter(meterId);
        return typedPage(meter.projectId(), TypedForm.of(meter), meterId, model);
    }

    private UseMeter typedMeter(UUID meterId) {
        UseMeter meter = book.one(meterId);
        desk.sheet(meter.projectId(), May.EDIT_PROJECT);
        if (meter.typed() == null) {
            throw new NotFound();
        }
        return meter;
    }

    @PostMapping(METER + "/typed")
    String correct(
            @PathVariable UUID meterId,
            @ModelAttribute("typedForm") TypedForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        UUID projectId = typedMeter(meterId).projectId();
        Entered entered = new Entered(errors);
        String name = form.nameIn(entered);
        UseMeter.TypedUse read = form.read(entered);
        return saving.of(errors, response, () -> typedPage(projectId, null, meterId, model))
                .refusedAt("name")
                .make(
                        () -> {
                            book.correct(meterId, Entered.version(form.version()), name, read);
                            return Optional.empty();
                        },
                        () -> {
                            Flash.done(next, "The use of " + name + " is corrected.");
                            return use(projectId);
                        },
                        model,
                        form::written,
                        () -> theirs(meterId));
    }

    private Saving.Theirs theirs(UUID meterId) {
        UseMeter now = book.one(meterId);
        return new Saving.Theirs(
                "this meter’s use",
                "/use-meters/" + meterId + "/typed",
                now.version(),
                TypedForm.of(now).written());
    }

    @PostMapping(METER + "/count")
    String count(@PathVariable UUID meterId, RedirectAttributes next) {
        UseMeter meter = book.count(meterId, true);
        Flash.doneWithUndo(next, "These readings count.", "/use-meters/" + meterId + "/leave-out");
        return use(meter.projectId());
    }

    @PostMapping(METER + "/leave-out")
    String leaveOut(@PathVariable UUID meterId, RedirectAttributes next) {
        UseMeter meter = book.count(meterId, false);
        Flash.doneWithUndo(next, "These readings are left out.", "/use-meters/" + meterId + "/count");
        return use(meter.projectId());
    }

    @PostMapping(METER + "/remove")
    String remove(@PathVariable UUID meterId, RedirectAttributes next) {
        UseMeter meter = book.end(meterId);
        Flash.doneWithUndo(next, "Taken away. A file stays among the papers.", "/use-meters/" + meterId + "/restore");
        return use(meter.projectId());
    }

    @PostMapping(METER + "/restore")
    String restore(@PathVariable UUID meterId, RedirectAttributes next) {
        UseMeter meter = book.restore(meterId);
        Flash.done(next, "Put back.");
        return use(meter.projectId());
    }

    private static String use(UUID projectId) {
        return "redirect:/projects/" + projectId + "/use";
    }
}
