package org.plumbrow.survey;

import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.PhoneDoor;
import org.plumbrow.project.PhoneReply;
import org.plumbrow.web.Conflict;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Words;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;

/** Where a phone sends what it has kept of a survey. */
@Controller
class SurveySendingController extends PhoneDoor {

    private final SurveySending sending;
    private final SurveyReading reading;
    private final Words words;

    SurveySendingController(SurveySending sending, SurveyReading reading, Words words) {
        super("survey");
        this.sending = sending;
        this.reading = reading;
        this.words = words;
    }

    @PostMapping("/projects/{projectId}/survey/{surveyPart}/sending")
    ResponseEntity<PhoneReply> part(
            @PathVariable UUID projectId,
            @PathVariable String surveyPart,
            @RequestParam(defaultValue = "-1") String version,
            @RequestParam Map<String, String> typed) {
        SurveyPart part = SurveyPart.ofPath(surveyPart).orElseThrow(NotFound::new);
        try {
            PhoneReply reply = sending.part(of(typed), projectId, part, SurveyPages.opened(version), typed);
            String then = typed.getOrDefault("then", "");
            return reply.leadingTo(home(projectId) + SurveyPages.after(part, reply.asked(), then));
        } catch (EditedMeanwhile newer) {
            return conflict(projectId, part, typed).answer();
        }
    }

    @PostMapping("/projects/{projectId}/survey/photos/{photoItem}/sending")
    ResponseEntity<PhoneReply> photo(
            @PathVariable UUID projectId,
            @PathVariable int photoItem,
            @RequestParam Map<String, String> typed,
            @RequestParam(required = false) @Nullable MultipartFile photo) {
        PhotoItem item = PhotoItem.numbered(photoItem).orElseThrow(NotFound::new);
        Upload upload = photo == null ? null : Upload.of(photo, item.words());
        return sending.photo(of(typed), projectId, item, upload).leadingTo(home(projectId) + "/photos");
    }

    private static String home(UUID projectId) {
        return "/projects/" + projectId + "/survey";
    }

    private PhoneReply conflict(UUID projectId, SurveyPart part, Map<String, String> typed) {
        SurveyReading.Part now = reading.part(projectId, part);
        List<Conflict.Row> rows = SurveyPages.conflict(now, projectId, typed).rows().stream()
                .filter(Conflict.Row::differs)
                .toList();
        return now.sheet()
                .stored(part)
                .map(stored -> PhoneReply.conflict(
                        stored.version(), stored.changedBy(), words.moment(stored.changedAt()), rows))
                .orElseGet(() -> PhoneReply.conflict(0, "", "", rows));
    }
}
