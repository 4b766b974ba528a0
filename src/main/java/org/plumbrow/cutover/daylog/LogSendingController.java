package org.plumbrow.cutover.daylog;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.daylog.LogSending.Answer;
import org.plumbrow.project.PhoneSending;
import org.plumbrow.web.NotForYourRole;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.ExtendedModelMap;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import org.springframework.web.servlet.mvc.support.RedirectAttributesModelMap;

/**
 * Where a phone sends what it has kept of a day log: each form's own fields, read by that form's own door, with the id of
 * the sending. Answered for the script, never with a page: a page in its place says that nothing was taken.
 */
@Controller
class LogSendingController {

    private static final String LOG = "/projects/{projectId}/day-log/";

    private final LogSending sending;
    private final DayLogController log;
    private final DayLogChangesController changes;
    private final Clock clock;

    LogSendingController(LogSending sending, DayLogController log, DayLogChangesController changes, Clock clock) {
        this.sending = sending;
        this.log = log;
        this.changes = changes;
        this.clock = clock;
    }

    /** One of the forms of the day log, as it is sent with signal. */
    private interface Form {
        String send(Model model, RedirectAttributes next);
    }

    @PostMapping(LOG + "steps/{logStep}/done/sending")
    ResponseEntity<Answer> done(
            @PathVariable UUID projectId,
            @PathVariable String logStep,
            @RequestParam Map<String, String> all,
            HttpServletResponse answer) {
        return take(
                projectId,
                "steps/" + logStep + "/done",
                all,
                (model, next) -> log.done(projectId, logStep, all, model, answer, next));
    }

    @PostMapping(LOG + "steps/{logStep}/readings/sending")
    ResponseEntity<Answer> readings(
            @PathVariable UUID projectId,
            @PathVariable String logStep,
            @RequestParam Map<String, String> all,
            HttpServletResponse answer) {
        return take(
                projectId,
                "steps/" + logStep + "/readings",
                all,
                (model, next) -> log.readings(projectId, logStep, all, model, answer, next));
    }

    @PostMapping(LOG + "steps/{logStep}/photo/sending")
    ResponseEntity<Answer> photo(
            @PathVariable UUID projectId,
            @PathVariable String logStep,
            @RequestParam Map<String, String> all,
            @RequestParam(required = false) @Nullable MultipartFile photo,
            HttpServletResponse answer) {
        return take(
                projectId,
                "steps/" + logStep + "/photo",
                all,
                (model, next) -> changes.photo(projectId, logStep, all, photo, model, answer, next));
    }

    @PostMapping(LOG + "holds/{logHold}/sign/sending")
    ResponseEntity<Answer> sign(
            @PathVariable UUID projectId,
            @PathVariable String logHold,
            @RequestParam Map<String, String> all,
            HttpServletResponse answer) {
        return take(
                projectId,
                "holds/" + logHold + "/sign",
                all,
                (model, next) -> log.sign(projectId, logHold, all, model, answer, next));
    }

    @PostMapping(LOG + "wrong/sending")
    ResponseEntity<Answer> wrong(
            @PathVariable UUID projectId, @RequestParam Map<String, String> all, HttpServletResponse answer) {
        return take(projectId, "wrong", all, (model, next) -> changes.wrong(projectId, all, model, answer, next));
    }

    @PostMapping(LOG + "reverse/sending")
    ResponseEntity<Answer> reverse(
            @PathVariable UUID projectId, @RequestParam Map<String, String> all, HttpServletResponse answer) {
        return take(projectId, "reverse", all, (model, next) -> changes.reverse(projectId, all, model, answer, next));
    }

    @PostMapping(LOG + "reverse-reason/sending")
    ResponseEntity<Answer> reverseReason(
            @PathVariable UUID projectId, @RequestParam Map<String, String> all, HttpServletResponse answer) {
        return take(
                projectId,
                "reverse-reason",
                all,
                (model, next) -> changes.reverseReason(projectId, all, model, answer, next));
    }

    @PostMapping(LOG + "reverse-mistake/sending")
    ResponseEntity<Answer> reverseMistake(
            @PathVariable UUID projectId, @RequestParam Map<String, String> all, HttpServletResponse answer) {
        return take(
                projectId,
                "reverse-mistake",
                all,
                (model, next) -> changes.reverseMistake(projectId, all, model, answer, next));
    }

    @PostMapping(LOG + "power-on/sending")
    ResponseEntity<Answer> powerOn(
            @PathVariable UUID projectId, @RequestParam Map<String, String> all, HttpServletResponse answer) {
        return take(projectId, "power-on", all, (model, next) -> changes.powerOn(projectId, all, model, answer, next));
    }

    private ResponseEntity<Answer> take(UUID projectId, String what, Map<String, String> all, Form form) {
        Answer answer = sending.take(of(all), projectId, what, tap(all), () -> against(form));
        HttpStatus status = switch (answer.said()) {
            case "refused" -> HttpStatus.UNPROCESSABLE_CONTENT;
            case "not-theirs" -> HttpStatus.FORBIDDEN;
            default -> HttpStatus.OK;
        };
        return ResponseEntity.status(status).body(answer);
    }

    /** What the form's own answer says against it: nothing when it leads back to the log. */
    private static List<Refusal> against(Form form) {
        Model model = new ExtendedModelMap();
        if (form.send(model, new RedirectAttributesModelMap()).equals(LogPages.BACK)) {
            return List.of();
        }
        return LogPages.problems(model);
    }

    private static Optional<PhoneSending> of(Map<String, String> all) {
        return PhoneSending.of(
                all.getOrDefault("sending", ""), all.getOrDefault("person", ""), all.getOrDefault("written", ""));
    }

    private PhoneTap tap(Map<String, String> all) {
        Instant sent = instant(all.getOrDefault("sent", ""));
        return new PhoneTap(instant(all.getOrDefault("written", "")), sent);
    }

    private Instant instant(String said) {
        try {
            return Instant.parse(said);
        } catch (DateTimeException notSaid) {
            return clock.instant();
        }
    }

    @ExceptionHandler(NotFound.class)
    ResponseEntity<Answer> gone() {
        return ResponseEntity.status(HttpStatus.NOT_FOUND)
                .body(Answer.refused(
                        List.of(Refusal.ofForm("This day log is no longer there, or not in your branches."))));
    }

    @ExceptionHandler(NotForYourRole.class)
    ResponseEntity<Answer> notForYou(NotForYourRole refused) {
        return ResponseEntity.status(HttpStatus.FORBIDDEN)
                .body(Answer.refused(List.of(Refusal.ofForm(refused.sentence()))));
    }
}
