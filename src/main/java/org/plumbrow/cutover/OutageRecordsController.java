package org.plumbrow.cutover;

import jakarta.servlet.http.HttpServletResponse;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Saving;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.duration.EquipmentKind;
import org.plumbrow.cutover.OutageForms.BlackoutForm;
import org.plumbrow.cutover.OutageForms.CustomerForm;
import org.plumbrow.cutover.OutageForms.UtilityForm;
import org.plumbrow.cutover.OutageForms.WorkForm;
import org.plumbrow.web.Access;
import org.plumbrow.web.Flash;
import org.plumbrow.web.Option;
import org.plumbrow.web.Refusal;
import org.plumbrow.web.Words;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Pages on which people write down what they bring home about an outage, and what decides it. */
@Controller
class OutageRecordsController {

    private static final int MOST_AFTER = 120;
    private static final String BACK = "redirect:/projects/{projectId}/outage";

    private final OutageReading reading;
    private final OutageRecords records;
    private final Saving saving;
    private final Access access;
    private final Words words;

    OutageRecordsController(OutageReading reading, OutageRecords records, Saving saving, Access access, Words words) {
        this.reading = reading;
        this.records = records;
        this.saving = saving;
        this.access = access;
        this.words = words;
    }

    @GetMapping("/projects/{projectId}/outage/utility")
    String utility(@PathVariable UUID projectId, Model model) {
        model.addAttribute("outageUtilityForm", new UtilityForm(null, "", ""));
        return utilityPage(projectId, model);
    }

    private String utilityPage(UUID projectId, Model model) {
        model.addAttribute("sheet", reading.choosing(projectId).sheet());
        return "cutover/utility";
    }

    @PostMapping("/projects/{projectId}/outage/utility")
    String utility(
            @PathVariable UUID projectId,
            @ModelAttribute("outageUtilityForm") UtilityForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        return saving.of(errors, response, () -> utilityPage(projectId, model))
                .make(() -> write(projectId, form), () -> written(next));
    }

    private Optional<Refusal> write(UUID projectId, UtilityForm form) {
        boolean told = form.toldOn() != null || !text(form.how()).isEmpty();
        boolean confirmed = !text(form.number()).isEmpty();
        if (!told && !confirmed) {
            return Optional.of(new Refusal("how", "Write how the utility was told, or its number, or both."));
        }
        LocalDate on = Objects.requireNonNullElse(form.toldOn(), words.today());
        Optional<Refusal> refusal = told ? records.utilityTold(projectId, on, text(form.how())) : Optional.empty();
        return refusal.isEmpty() && confirmed ? records.utilityConfirms(projectId, text(form.number())) : refusal;
    }

    private static String written(RedirectAttributes next) {
        Flash.done(next, "Written down.");
        return BACK;
    }

    @GetMapping("/projects/{projectId}/outage/customer")
    String customer(@PathVariable UUID projectId, Model model) {
        model.addAttribute("outageCustomerForm", new CustomerForm(null, "", "", ""));
        return customerPage(projectId, model);
    }

    private String customerPage(UUID projectId, Model model) {
        model.addAttribute("sheet", reading.choosing(projectId).sheet());
        model.addAttribute(
                "answers",
                List.of(
                        new Option("AGREED", "They agree to the day"),
                        new Option("DOES_NOT_WORK", "The day does not work for them"),
                        new Option("", "They have not said yet")));
        return "cutover/customer";
    }

    @PostMapping("/projects/{projectId}/outage/customer")
    String customer(
            @PathVariable UUID projectId,
            @ModelAttribute("outageCustomerForm") CustomerForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        return saving.of(errors, response, () -> customerPage(projectId, model))
                .make(() -> write(projectId, form), () -> written(next));
    }

    private Optional<Refusal> write(UUID projectId, CustomerForm form) {
        boolean told = form.toldOn() != null || !text(form.how()).isEmpty();
        boolean answered = !text(form.answer()).isEmpty();
        if (!told && !answered) {
            return Optional.of(new Refusal("how", "Write how the customer was told, or what they say, or both."));
        }
        LocalDate on = Objects.requireNonNullElse(form.toldOn(), words.today());
        Optional<Refusal> refusal = told ? records.customerTold(projectId, on, text(form.how())) : Optional.empty();
        boolean agrees = text(form.answer()).equals("AGREED");
        return refusal.isEmpty() && answered ? records.customerAnswers(projectId, agrees, text(form.note())) : refusal;
    }

    @GetMapping("/projects/{projectId}/outage/blackouts")
    String blackouts(@PathVariable UUID projectId, Model model) {
        model.addAttribute("blackoutForm", BlackoutForm.empty());
        return blackoutPage(projectId, model);
    }

    private String blackoutPage(UUID projectId, Model model) {
        model.addAttribute("sheet", reading.choosing(projectId).sheet());
        model.addAttribute(
                "weekdays",
                Arrays.stream(DayOfWeek.values())
                        .map(day -> new Option(day.name(), day.getDisplayName(TextStyle.FULL, Locale.US)))
                        .toList());
        return "cutover/blackouts";
    }

    @PostMapping("/projects/{projectId}/outage/blackouts")
    String addBlackout(
            @PathVariable UUID projectId,
            @ModelAttribute("blackoutForm") BlackoutForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        return saving.of(errors, response, () -> blackoutPage(projectId, model))
                .make(
                        () -> records.addBlackout(
                                projectId, form.row(access.actor().name())),
                        () -> {
                            Flash.done(next, "Added. The windows keep these hours free.");
                            return "redirect:/projects/{projectId}/outage/blackouts";
                        });
    }

    @PostMapping("/projects/{projectId}/outage/blackouts/{blackoutId}/end")
    String endBlackout(@PathVariable UUID projectId, @PathVariable UUID blackoutId, RedirectAttributes next) {
        records.endBlackout(projectId, blackoutId);
        Flash.doneWithUndo(
                next, "Taken out.", "/projects/" + projectId + "/outage/blackouts/" + blackoutId + "/restore");
        return "redirect:/projects/{projectId}/outage/blackouts";
    }

    @PostMapping("/projects/{projectId}/outage/blackouts/{blackoutId}/restore")
    String restoreBlackout(@PathVariable UUID projectId, @PathVariable UUID blackoutId, RedirectAttributes next) {
        records.restoreBlackout(projectId, blackoutId);
        Flash.done(next, "Put back.");
        return "redirect:/projects/{projectId}/outage/blackouts";
    }

    @GetMapping("/projects/{projectId}/outage/work")
    String work(@PathVariable UUID projectId, Model model) {
        model.addAttribute("outageWorkForm", WorkForm.of(records.work(projectId)));
        return workPage(projectId, model);
    }

    private String workPage(UUID projectId, Model model) {
        OutageSheet sheet = reading.choosing(projectId).sheet();
        model.addAttribute("sheet", sheet);
        model.addAttribute("parts", WorkForm.PARTS);
        model.addAttribute(
                "machineKinds",
                records.machineKinds(projectId, sheet.asking().today()).stream()
                        .map(kind -> new Option(kind.name(), kind.words()))
                        .toList());
        return "cutover/work";
    }

    @PostMapping("/projects/{projectId}/outage/work")
    String work(
            @PathVariable UUID projectId,
            @ModelAttribute("outageWorkForm") WorkForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        if (!errors.hasErrors()) {
            limits(form, errors);
        }
        return saving.of(errors, response, () -> workPage(projectId, model))
                .make(
                        () -> {
                            records.writeWork(projectId, form.content());
                            return Optional.empty();
                        },
                        () -> {
                            Flash.done(next, "Saved. The minutes and the windows follow.");
                            return BACK;
                        },
                        model,
                        () -> fields(form),
                        () -> theirs(projectId));
    }

    private static void limits(WorkForm form, BindingResult errors) {
        outside(errors, "meters", form.meters(), 1, 12, "Write how many meters are opened, 1 to 12.");
        outside(
                errors,
                "plannedMinutes",
                form.plannedMinutes(),
                15,
                720,
                "Write the minutes as a whole number from 15 to 720.");
        if (form.content().readyAfter().length() > MOST_AFTER) {
            errors.rejectValue("readyAfter", "refused", "120 characters fit; write it shorter.");
        }
    }

    private static void outside(
            BindingResult errors, String field, @Nullable Integer value, int least, int most, String sentence) {
        if (value != null && (value < least || value > most)) {
            errors.rejectValue(field, "refused", sentence);
        }
    }

    private Saving.Theirs theirs(UUID projectId) {
        WorkContent content = records.work(projectId);
        return new Saving.Theirs(
                "the work of this outage",
                "/projects/" + projectId + "/outage/work",
                content.version(),
                fields(WorkForm.of(content)));
    }

    private static List<Written> fields(WorkForm form) {
        return List.of(
                Written.of("What is done", "parts", form.parts() == null ? "" : String.join(",", form.parts())),
                Written.of("Meters", "meters", form.meters()),
                Written.of("Planned minutes", "plannedMinutes", form.plannedMinutes()),
                Written.of("Ready on", "readyOn", form.readyOn()),
                Written.of("Until then", "readyAfter", form.readyAfter()),
                Written.of(
                        "Shared equipment",
                        "equipment",
                        joined(form, EquipmentKind::name),
                        joined(form, EquipmentKind::words)));
    }

    private static String joined(WorkForm form, Function<EquipmentKind, String> as) {
        return form.content().equipment().stream().sorted().map(as).collect(Collectors.joining(","));
    }

    private static String text(@Nullable String typed) {
        return typed == null ? "" : typed.strip();
    }
}
