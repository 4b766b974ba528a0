package org.plumbrow.cutover;

import jakarta.servlet.http.HttpServletResponse;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.outage.WindowSearch.Candidate;
import org.plumbrow.cutover.OutageFacts.RainDate;
import org.plumbrow.cutover.OutageForms.CancelForm;
import org.plumbrow.cutover.OutageForms.WindowForm;
import org.plumbrow.cutover.OutageReading.Choosing;
import org.plumbrow.project.ProjectPage;
import org.plumbrow.web.Conflict;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Flash;
import org.plumbrow.web.May;
import org.plumbrow.web.Option;
import org.plumbrow.web.Refusal;
import org.plumbrow.web.Words;
import org.springframework.context.annotation.Bean;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The outage of a project: its windows, best first; choosing, moving and cancelling on pages of their own. */
@Controller
class OutageController {

    private static final int ORDER = 500;
    private static final String BACK = "redirect:/projects/{projectId}/outage";

    private final OutageReading reading;
    private final OutagePlanning planning;
    private final Words words;

    OutageController(OutageReading reading, OutagePlanning planning, Words words) {
        this.reading = reading;
        this.planning = planning;
        this.words = words;
    }

    @Bean
    static ProjectPage outagePage() {
        return new ProjectPage(ORDER, "cutover.page.outage", "/outage", May.SEE_CUTOVERS);
    }

    @GetMapping("/projects/{projectId}/outage")
    String outage(@PathVariable UUID projectId, Model model) {
        model.addAttribute("sheet", reading.sheet(projectId));
        return "cutover/outage";
    }

    /**
     * @param window the day of an offered window; without it a day is named by hand
     * @param start the hour of a ranked one; without it the day's own
     * @param crew who is free then
     */
    @GetMapping("/projects/{projectId}/outage/choose")
    String choose(
            @PathVariable UUID projectId,
            @RequestParam @Nullable String window,
            @RequestParam @Nullable String start,
            @RequestParam @Nullable String crew,
            Model model) {
        Choosing choosing = reading.choosing(projectId);
        OutageSheet sheet = choosing.sheet();
        Long version = sheet.live() == null ? null : sheet.live().version();
        WindowForm form = sheet.windows() == null
                ? new WindowForm(null, null, sheet.asking().plannedMinutes(), null, null, null, "", version)
                : sheet.windows().best().stream()
                        .filter(candidate -> candidate.day().toString().equals(window))
                        .findFirst()
                        .map(candidate ->
                                WindowForm.of(candidate, sheet.asking().plannedMinutes(), version))
                        .orElseGet(() -> byHand(sheet, version))
                        .at(window, start, crew);
        model.addAttribute("windowForm", form);
        return page(choosing, form, model);
    }

    private static WindowForm byHand(OutageSheet sheet, @Nullable Long version) {
        OutageFacts live = sheet.live();
        if (live != null) {
            return new WindowForm(null, live.start(), live.outageMinutes(), live.crewId(), null, null, "", version);
        }
        Candidate best = sheet.bestWindow();
        UUID crew = best == null ? null : UUID.fromString(best.crewId());
        return new WindowForm(null, null, sheet.asking().plannedMinutes(), crew, null, null, "", version);
    }

    private String page(Choosing choosing, WindowForm form, Model model) {
        model.addAttribute("choosing", choosing);
        model.addAttribute("sheet", choosing.sheet());
        form.choice()
                .ifPresent(choice ->
                        model.addAttribute("drafts", reading.drafts(choosing.sheet(), choice, form.reasonText())));
        return "cutover/choose";
    }

    /** @param act book, hold or move: the button that was pressed */
    @PostMapping("/projects/{projectId}/outage/choose")
    String choose(
            @PathVariable UUID projectId,
            @RequestParam(defaultValue = "book") String act,
            @ModelAttribute("windowForm") WindowForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        Choosing choosing = reading.choosing(projectId);
        OutageFacts live = choosing.sheet().live();
        if (!errors.hasErrors()) {
            form.missing().forEach(refusal -> refusal.putAt(errors));
        }
        if (!errors.hasErrors()) {
            OutageChoice choice = form.choice().orElseThrow();
            try {
                refusals(projectId, act, form, choice, live).forEach(refusal -> refusal.putAt(errors));
            } catch (EditedMeanwhile | OptimisticLockingFailureException newer) {
                return conflict(projectId, form, model, response, newer);
            }
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return page(choosing, form, model);
        }
        Flash.done(next, done(act, form));
        return BACK;
    }

    private List<Refusal> refusals(
            UUID projectId, String act, WindowForm form, OutageChoice choice, @Nullable OutageFacts live) {
        if (live != null) {
            return planning.move(projectId, Objects.requireNonNullElse(form.version(), -1L), choice, form.reasonText());
        }
        return act.equals("hold") ? planning.hold(projectId, choice) : planning.book(projectId, choice);
    }

    private String done(String act, WindowForm form) {
        LocalDate day = Objects.requireNonNull(form.day());
        return act.equals("hold")
                ? "Day held: " + words.day(day) + ". Nobody outside was told."
                : "Window set: " + words.day(day) + ". The notices to the utility and the customer are in the outbox.";
    }

    /** Theirs beside yours, as long as there still is a window to move. */
    private String conflict(
            UUID projectId, WindowForm yours, Model model, HttpServletResponse response, RuntimeException newer) {
        OutageFacts theirs = reading.sheet(projectId).live();
        if (theirs == null) {
            throw newer;
        }
        response.setStatus(409);
        return new Conflict(
                        "this outage window",
                        "/projects/" + projectId + "/outage/choose",
                        theirs.version(),
                        beside(theirs, yours, reading.choosing(projectId).crews()))
                .show(model);
    }

    private List<Conflict.Row> beside(OutageFacts theirs, WindowForm yours, List<Option> crews) {
        RainDate rain = theirs.rainDate();
        return List.of(
                day("Day", "day", theirs.day(), yours.day()),
                time("Power off at", "start", theirs.start(), yours.start()),
                new Conflict.Row(
                        "Minutes",
                        "outageMinutes",
                        Integer.toString(theirs.outageMinutes()),
                        text(yours.outageMinutes())),
                new Conflict.Row(
                        "Crew",
                        "crewId",
                        text(theirs.crewId()),
                        text(yours.crewId()),
                        crew(theirs.crewId(), crews),
                        crew(yours.crewId(), crews)),
                day("Rain day", "rainDay", rain == null ? null : rain.day(), yours.rainDay()),
                time(
                        "Power off on the rain day at",
                        "rainStart",
                        rain == null ? null : rain.start(),
                        yours.rainStart()),
                new Conflict.Row("Reason", "reason", yours.reasonText(), yours.reasonText()));
    }

    private Conflict.Row day(String label, String field, @Nullable LocalDate theirs, @Nullable LocalDate yours) {
        return new Conflict.Row(label, field, text(theirs), text(yours), words.day(theirs), words.day(yours));
    }

    private Conflict.Row time(String label, String field, @Nullable LocalTime theirs, @Nullable LocalTime yours) {
        return new Conflict.Row(label, field, text(theirs), text(yours), words.time(theirs), words.time(yours));
    }

    private static String crew(@Nullable UUID id, List<Option> crews) {
        return crews.stream()
                .filter(option -> option.value().equals(text(id)))
                .map(Option::words)
                .findFirst()
                .orElse(id == null ? "nobody yet" : "a crew that is no longer offered");
    }

    private static String text(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }

    @PostMapping("/projects/{projectId}/outage/book")
    String bookHeld(
            @PathVariable UUID projectId, @RequestParam(defaultValue = "-1") long version, RedirectAttributes next) {
        planning.bookHeld(projectId, version);
        Flash.done(next, "Booked. The notices to the utility and the customer are in the outbox.");
        return BACK;
    }

    @GetMapping("/projects/{projectId}/outage/cancel")
    String cancel(@PathVariable UUID projectId, Model model) {
        Choosing choosing = reading.choosing(projectId);
        OutageFacts live = choosing.sheet().live();
        if (live == null) {
            return BACK;
        }
        model.addAttribute("cancelForm", new CancelForm("", live.version()));
        return cancelPage(choosing, "", model);
    }

    private String cancelPage(Choosing choosing, String reason, Model model) {
        model.addAttribute("sheet", choosing.sheet());
        model.addAttribute("drafts", reading.cancellation(choosing.sheet(), reason));
        return "cutover/cancel";
    }

    @PostMapping("/projects/{projectId}/outage/cancel")
    String cancel(
            @PathVariable UUID projectId,
            @ModelAttribute("cancelForm") CancelForm form,
            BindingResult errors,
            Model model,
            HttpServletResponse response,
            RedirectAttributes next) {
        if (!errors.hasErrors()) {
            planning.cancel(projectId, Objects.requireNonNullElse(form.version(), -1L), form.reasonText())
                    .forEach(refusal -> refusal.putAt(errors));
        }
        if (errors.hasErrors()) {
            response.setStatus(422);
            return cancelPage(reading.choosing(projectId), form.reasonText(), model);
        }
        Flash.done(next, "Cancelled. Whoever was told of the day is told of this too.");
        return BACK;
    }
}
