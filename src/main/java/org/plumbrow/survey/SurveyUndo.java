package org.plumbrow.survey;

import java.util.Optional;
import java.util.UUID;
import org.plumbrow.database.ReadOnce;
import org.plumbrow.project.JournalLine;
import org.plumbrow.project.JournalUndo;
import org.plumbrow.web.Access;
import org.plumbrow.web.Flash;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Takes the last change of a part back, from its page or from its line in the journal. */
@Controller
class SurveyUndo implements JournalUndo {

    private final SurveyBook book;
    private final SurveyRows rows;
    private final Access access;

    SurveyUndo(SurveyBook book, SurveyRows rows, Access access) {
        this.book = book;
        this.rows = rows;
        this.access = access;
    }

    private record Sheet(UUID projectId) {}

    static String address(UUID projectId, SurveyPart part, long version) {
        return "/projects/%s/survey/%s/undo?version=%d".formatted(projectId, part.path(), version);
    }

    /** Only the line of a part's last change fits. */
    @Override
    public Optional<String> action(JournalLine line) {
        if (!line.kind().equals(PartWritten.KIND)) {
            return Optional.empty();
        }
        SurveySheet sheet = ReadOnce.of(new Sheet(line.projectId()), () -> rows.of(line.projectId()));
        return SurveyPart.ofPath(line.facts().getOrDefault("part", ""))
                .flatMap(sheet::stored)
                .filter(stored -> stored.changedAt().equals(line.at()) && book.offersUndo(stored))
                .filter(stored -> access.may(SurveyBook.act(stored.part()).name()))
                .map(stored -> address(line.projectId(), stored.part(), stored.version()));
    }

    @PostMapping("/projects/{projectId}/survey/{surveyPart}/undo")
    String undo(
            @PathVariable UUID projectId,
            @PathVariable String surveyPart,
            @RequestParam(defaultValue = "-1") String version,
            RedirectAttributes next) {
        SurveyPart part = SurveyPart.ofPath(surveyPart).orElseThrow(NotFound::new);
        boolean done = book.undo(projectId, part, SurveyPages.opened(version));
        Flash.done(
                next,
                done
                        ? part.words() + ": the last change is taken back."
                        : "The last change is more than 24 hours old. Write the readings as they should be.");
        return SurveyPages.BACK + "/" + part.path();
    }
}
