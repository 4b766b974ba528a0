package org.plumbrow.survey;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.evidence.Upload;
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

    /** What became of a sending. */
    sealed interface Answer {
        /** @param asked readings that are asked about in the part now */
        record Stored(long version, int asked) implements Answer {}

        /** The same sending had come before. */
        record Already(long version) implements Answer {}

        record Refused(List<Refusal> refusals) implements Answer {}

        /** Somebody else wrote it. */
        record NotTheirs() implements Answer {}
    }

    /** @throws EditedMeanwhile if somebody was faster; nothing is stored then, and the same id may come again */
    Answer part(
            Optional<PhoneSending> sending, UUID projectId, SurveyPart part, long version, Map<String, String> typed) {
        UUID branchId = projectAccess.require(projectId, SurveyBook.act(part));
        Optional<Answer> known = known(sending, projectId);
        if (known.isPresent()) {
            return known.get();
        }
        SurveyBook.Said said = book.save(projectId, part, version, typed);
        if (said instanceof SurveyBook.Said.Refused refused) {
            return new Answer.Refused(refused.refusals());
        }
        var stored = (SurveyBook.Said.Stored) said;
        sendings.took(sending.orElseThrow(), branchId, projectId, part.path(), stored.version());
        return new Answer.Stored(stored.version(), stored.open().size());
    }

    Answer photo(Optional<PhoneSending> sending, UUID projectId, PhotoItem item, @Nullable Upload upload) {
        UUID branchId = projectAccess.require(projectId, May.WRITE_SURVEY);
        Optional<Answer> known = known(sending, projectId);
        if (known.isPresent()) {
            return known.get();
        }
        Optional<Refusal> refused = photos.add(projectId, item, upload);
        if (refused.isPresent()) {
            return new Answer.Refused(List.of(refused.get()));
        }
        sendings.took(sending.orElseThrow(), branchId, projectId, "photos/" + item.number(), 0);
        return new Answer.Stored(0, 0);
    }

    private Optional<Answer> known(Optional<PhoneSending> sending, UUID projectId) {
        if (sending.isEmpty()) {
            return Optional.of(new Answer.Refused(List.of(Refusal.ofForm(
                    "This came without its number, so it cannot be told from another. Save it again."))));
        }
        if (!sendings.isTheirs(sending.get())) {
            return Optional.of(new Answer.NotTheirs());
        }
        return sendings.before(sending.get(), projectId).map(Answer.Already::new);
    }
}
