package org.plumbrow.survey;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.PhoneReply;
import org.plumbrow.project.PhoneSending;
import org.plumbrow.project.PhoneSendings;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Takes what a phone has kept of a survey. Each sending counts once, also when the answer to it was lost. */
@Service
@Transactional
class SurveySending {

    private final SurveyBook book;
    private final SurveyPhotos photos;
    private final PhoneSendings sendings;
    private final ProjectAccess projectAccess;

    SurveySending(SurveyBook book, SurveyPhotos photos, PhoneSendings sendings, ProjectAccess projectAccess) {
        this.book = book;
        this.photos = photos;
        this.sendings = sendings;
        this.projectAccess = projectAccess;
    }

    /** @throws EditedMeanwhile if somebody was faster; nothing is stored then, and the same id may come again */
    PhoneReply part(
            Optional<PhoneSending> sending, UUID projectId, SurveyPart part, long version, Map<String, String> typed) {
        UUID branchId = projectAccess.require(projectId, SurveyBook.act(part));
        Optional<PhoneReply> known = sendings.known(sending, projectId);
        if (known.isPresent()) {
            return known.get();
        }
        SurveyBook.Said said = book.save(projectId, part, version, typed);
        if (said instanceof SurveyBook.Said.Refused refused) {
            return PhoneReply.refused(refused.refusals());
        }
        var stored = (SurveyBook.Said.Stored) said;
        sendings.took(sending.orElseThrow(), branchId, projectId, part.path(), stored.version());
        return PhoneReply.stored(stored.version(), stored.open().size());
    }

    PhoneReply photo(Optional<PhoneSending> sending, UUID projectId, PhotoItem item, @Nullable Upload upload) {
        UUID branchId = projectAccess.require(projectId, May.WRITE_SURVEY);
        Optional<PhoneReply> known = sendings.known(sending, projectId);
        if (known.isPresent()) {
            return known.get();
        }
        Optional<Refusal> refused = photos.add(projectId, item, upload);
        if (refused.isPresent()) {
            return PhoneReply.refused(List.of(refused.get()));
        }
        sendings.took(sending.orElseThrow(), branchId, projectId, "photos/" + item.number(), 0);
        return PhoneReply.stored(0, 0);
    }
}
