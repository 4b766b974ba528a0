package org.plumbrow.evidence;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.UUID;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** Gives files back: photos to look at, everything else to keep, and nothing that a browser would run. */
@Controller
class EvidenceController {

    private final EvidenceRows rows;
    private final StoredFiles files;
    private final Access access;
    private final EvidenceDoor door;

    EvidenceController(EvidenceRows rows, StoredFiles files, Access access, EvidenceDoor door) {
        this.rows = rows;
        this.files = files;
        this.access = access;
        this.door = door;
    }

    @GetMapping("/evidence/{evidenceId}")
    @Transactional(readOnly = true)
    public ResponseEntity<byte[]> file(@PathVariable UUID evidenceId) {
        EvidenceFacts facts = opened(evidenceId);
        return answer(facts, files.content(evidenceId).orElseThrow(NotFound::new));
    }

    @GetMapping("/evidence/{evidenceId}/thumbnail")
    @Transactional(readOnly = true)
    public ResponseEntity<byte[]> thumbnail(@PathVariable UUID evidenceId) {
        EvidenceFacts facts = opened(evidenceId);
        return answer(facts, files.thumbnail(evidenceId).orElseThrow(NotFound::new));
    }

    private EvidenceFacts opened(UUID evidence) {
        EvidenceFacts facts = rows.find(evidence).orElseThrow(NotFound::new);
        if (facts.projectId() == null) {
            access.require(facts.branchId(), May.SEE_PROJECTS);
        } else {
            door.require(facts.projectId());
        }
        if (facts.hidden() && !access.may(facts.branchId(), May.EDIT_PROJECT)) {
            throw new NotFound("hidden evidence");
        }
        return facts;
    }

    private static ResponseEntity<byte[]> answer(EvidenceFacts facts, StoredFiles.Content content) {
        boolean picture = content.mediaType().startsWith("image/");
        ContentDisposition.Builder disposition =
                picture ? ContentDisposition.inline() : ContentDisposition.attachment();
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(content.mediaType()))
                .header("X-Content-Type-Options", "nosniff")
                .header("Content-Security-Policy", EvidenceFile.NOTHING_RUNS)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        disposition
                                .filename(facts.name(), StandardCharsets.UTF_8)
                                .build()
                                .toString())
                .cacheControl(CacheControl.maxAge(Duration.ofHours(1)).cachePrivate())
                .body(content.bytes());
    }
}
