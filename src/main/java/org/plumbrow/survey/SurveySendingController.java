package org.plumbrow.survey;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.PhoneSending;
import org.plumbrow.survey.SurveySending.Answer;
import org.plumbrow.web.Conflict;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.NotForYourRole;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.plumbrow.web.Words;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/**
 * Where a phone sends what it has kept of a survey: the form's own fields, with the id of the sending. Answered for the
 * script, never with a page: a page in its place (signing in, a token that has ended) says that nothing was taken.
 */
@Controller
class SurveySendingController {

    private final SurveySending sending;
    private final SurveyReading reading;
    private final Words words;

    SurveySendingController(SurveySending sending, SurveyReading reading, Words words) {
        this.sending = sending;
        this.reading = reading;
        this.words = words;
    }

    /**
     * The answer to one sending.
     *
     * @param said stored, already, refused, conflict or not-theirs; only after the first two may the phone forget it
     * @param version of the part now
     * @param next address of the page to go on with; empty for none
     * @param theirs what somebody else wrote meanwhile, where it differs
     */
    record Reply(
            String said,
            long version,
            String next,
            int asked,
            List<Refusal> problems,
            String by,
            String at,
            List<Conflict.Row> theirs) {

        static Reply refused(List<Refusal> problems) {
            return new Reply("refused", 0, "", 0, problems, "", "", List.of());
        }

        static Reply stored(String said, long version, int asked, String next) {
            return new Reply(said, version, next, asked, List.of(), "", "", List.of());
        }
    }

    @PostMapping("/projects/{projectId}/survey/{surveyPart}/sending")
    ResponseEntity<Reply> part(
            @PathVariable UUID projectId,
            @PathVariable String surveyPart,
            @RequestParam(defaultValue = "-1") String version,
            @RequestParam Map<String, String> typed) {
        SurveyPart part = SurveyPart.ofPath(surveyPart).orElseThrow(NotFound::new);
        try {
            Answer answer = sending.part(of(typed), projectId, part, SurveyPages.opened(version), typed);
            int asked = answer instanceof Answer.Stored stored ? stored.asked() : 0;
            return reply(answer, home(projectId) + SurveyPages.after(part, asked, typed.getOrDefault("then", "")));
        } catch (EditedMeanwhile newer) {
            return ResponseEntity.status(HttpStatus.CONFLICT).body(conflict(projectId, part, typed));
        }
    }

    @PostMapping("/projects/{projectId}/survey/photos/{photoItem}/sending")
    ResponseEntity<Reply> photo(
            @PathVariable UUID projectId,
            @PathVariable int photoItem,
            @RequestParam Map<String, String> typed,
            @RequestParam(required = false) @Nullable MultipartFile photo) {
        PhotoItem item = PhotoItem.numbered(photoItem).orElseThrow(NotFound::new);
        Upload upload = photo == null ? null : Upload.of(photo, item.words());
        return reply(sending.photo(of(typed), projectId, item, upload), home(projectId) + "/photos");
    }

    private static String home(UUID projectId) {
        return "/projects/" + projectId + "/survey";
    }

    private static Optional<PhoneSending> of(Map<String, String> typed) {
        return PhoneSending.of(
                typed.getOrDefault("sending", ""), typed.getOrDefault("person", ""), typed.getOrDefault("written", ""));
    }

    private static ResponseEntity<Reply> reply(Answer answer, String next) {
        if (answer instanceof Answer.Stored stored) {
            return ResponseEntity.ok(Reply.stored("stored", stored.version(), stored.asked(), next));
        }
        if (answer instanceof Answer.Already already) {
            return ResponseEntity.ok(Reply.stored("already", already.version(), 0, next));
        }
        if (answer instanceof Answer.Refused refused) {
            return ResponseEntity.status(HttpStatus.UNPROCESSABLE_CONTENT).body(Reply.refused(refused.refusals()));
        }
        return ResponseEntity.status(HttpStatus.FORBIDDEN).body(Reply.stored("not-theirs", 0, 0, ""));
    }

    private Reply conflict(UUID projectId, SurveyPart part, Map<String, String> typed) {
        SurveyReading.Part now = reading.part(projectId, part);
        List<Conflict.Row> rows = SurveyPages.conflict(now, projectId, typed).rows().stream()
                .filter(Conflict.Row::differs)
                .toList();
        return now.sheet()
                .stored(part)
                .map(stored -> new Reply(
                        "conflict",
                        stored.version(),
                        "",
                        0,
                        List.of(),
                        stored.changedBy(),
                        words.moment(stored.changedAt()),
                        rows))
                .orElseGet(() -> new Reply("conflict", 0, "", 0, List.of(), "", "", rows));
    }

    @ExceptionHandler(NotFound.class)
    ResponseEntity<Reply> gone() {
        return ResponseEntity.status(HttpStatus.NOT_FOUND)
                .body(Reply.refused(
                        List.of(Refusal.ofForm("This survey is no longer there, or not in your branches."))));
    }

    @ExceptionHandler(NotForYourRole.class)
    ResponseEntity<Reply> notForYou(NotForYourRole refused) {
        return ResponseEntity.status(HttpStatus.FORBIDDEN)
                .body(Reply.refused(List.of(Refusal.ofForm(refused.sentence()))));
    }
}
