package org.plumbrow.cutover.daylog;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.cutover.daylog.LogPen.Said;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.evidence.Keeping;
import org.plumbrow.evidence.Upload;
import org.plumbrow.web.Refusal;
import org.springframework.stereotype.Service;

/** Photos of a step: kept as evidence of the project, named in the log. */
@Service
class LogPhotos {

    private final LogPen pen;
    private final EvidenceStore evidence;

    LogPhotos(LogPen pen, EvidenceStore evidence) {
        this.pen = pen;
        this.evidence = evidence;
    }

    Said add(UUID projectId, UUID entryId, String step, @Nullable Upload upload) {
        return pen.write(projectId, entryId, writing -> add(writing, entryId, step, upload));
    }

    private Said add(Writing writing, UUID entryId, String step, @Nullable Upload upload) {
        boolean known =
                ProcedureTable.LINES.stream().anyMatch(line -> line.code().equals(step));
        if (!known || writing.log().isClosed()) {
            return Said.refused("", "This log takes no photo any more.");
        }
        if (upload == null) {
            return Said.refused("photo", "Take or choose a photo first.");
        }
        Keeping kept = evidence.keep(writing.log().branchId(), writing.log().projectId(), upload, writing.actor());
        if (kept instanceof Keeping.Refused refused) {
            return Said.refused(List.of(new Refusal("photo", refused.sentence())));
        }
        writing.photo(entryId, step, ((Keeping.Kept) kept).evidence().id());
        return Said.stored("a photo at " + writing.state().step(step).title().toLowerCase(java.util.Locale.ROOT) + ".");
    }
}
