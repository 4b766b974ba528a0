package org.plumbrow.schedule.crewweek;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.project.PhoneClock;
import org.plumbrow.project.PhoneDoor;
import org.plumbrow.project.PhoneReply;
import org.plumbrow.project.WrittenDown;
import org.plumbrow.web.Conflict;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.Entered;
import org.plumbrow.web.Refusal;
import org.plumbrow.web.Words;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.validation.BindingResult;
import org.springframework.validation.FieldError;
import org.springframework.validation.ObjectError;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/** Where a phone sends what it has kept of a daily report and of day one. */
@Controller
class FieldSendingController extends PhoneDoor {

    private static final String REPORT = "/crews/{crewId}/reports/{projectId}/{reportDay}";
    private static final String STEP = "/projects/{projectId}/day-one/{dayOneStep}";

    private final FieldSending sending;
    private final DailyReports reports;
    private final ReportPages pages;
    private final Words words;
    private final Clock clock;

    FieldSendingController(FieldSending sending, DailyReports reports, ReportPages pages, Words words, Clock clock) {
        super("report or step");
        this.sending = sending;
        this.reports = reports;
        this.pages = pages;
        this.words = words;
        this.clock = clock;
    }

    private WrittenDown when(Map<String, String> typed) {
        Instant now = clock.instant();
        return WrittenDown.on(PhoneClock.of(typed, now), now);
    }

    @PostMapping(REPORT + "/sending")
    ResponseEntity<PhoneReply> report(
            @PathVariable UUID crewId,
            @PathVariable UUID projectId,
            @PathVariable @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate reportDay,
            @ModelAttribute("report") ReportForm form,
            BindingResult errors,
            @RequestParam Map<String, String> typed) {
        WrittenDown when = when(typed);
        ReportSheet sheet = reports.sheet(crewId, projectId, reportDay, when.at());
        DailyReport report = form.read(new Entered(errors), sheet);
        if (errors.hasErrors()) {
            return PhoneReply.refused(problems(errors)).answer();
        }
        try {
            return sending.report(of(typed), sheet, report, when).leadingTo(sheet.address());
        } catch (EditedMeanwhile newer) {
            return conflict(form, reports.sheet(crewId, projectId, reportDay)).answer();
        }
    }

    private static List<Refusal> problems(BindingResult errors) {
        return errors.getAllErrors().stream()
                .map(error -> new Refusal(field(error), String.valueOf(error.getDefaultMessage())))
                .toList();
    }

    private static String field(ObjectError error) {
        return error instanceof FieldError at ? at.getField() : "";
    }

    /** Who says the same as somebody before them is in no conflict. */
    private PhoneReply conflict(ReportForm form, ReportSheet now) {
        List<Conflict.Row> rows = Written.beside(pages.form(now).written(now), form.written(now)).stream()
                .filter(Conflict.Row::differs)
                .toList();
        return now.written()
                .filter(stored -> !rows.isEmpty())
                .map(stored -> PhoneReply.conflict(
                        now.version(), stored.by(), words.moment(stored.when().at()), rows))
                .orElseGet(() -> PhoneReply.already(now.version()));
    }

    @PostMapping(REPORT + "/photos/sending")
    ResponseEntity<PhoneReply> photo(
            @PathVariable UUID crewId,
            @PathVariable UUID projectId,
            @PathVariable @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) LocalDate reportDay,
            @RequestParam Map<String, String> typed,
            @RequestParam(required = false) @Nullable MultipartFile photo) {
        ReportSheet sheet =
                reports.sheet(crewId, projectId, reportDay, when(typed).at());
        if (photo == null || photo.isEmpty()) {
            return PhoneReply.refused(List.of(new Refusal("photo", "Take a photo first.")))
                    .answer();
        }
        return sending.photo(of(typed), sheet, ReportPages.upload(photo, reportDay))
                .leadingTo(sheet.address());
    }

    @PostMapping(STEP + "/tick/sending")
    ResponseEntity<PhoneReply> tick(
            @PathVariable UUID projectId, @PathVariable String dayOneStep, @RequestParam Map<String, String> typed) {
        return sending.tick(of(typed), projectId, DayOnePages.step(dayOneStep), when(typed))
                .answer();
    }

    @PostMapping(STEP + "/take-back/sending")
    ResponseEntity<PhoneReply> takeBack(
            @PathVariable UUID projectId,
            @PathVariable String dayOneStep,
            @RequestParam(defaultValue = "") String version,
            @RequestParam Map<String, String> typed) {
        return sending.takeBack(of(typed), projectId, DayOnePages.step(dayOneStep), Entered.version(version))
                .answer();
    }
}
