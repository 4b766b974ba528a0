package org.plumbrow.evidence;

import com.drew.lang.GeoLocation;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Actor;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Keeps files and signatures and gives them back. Whoever calls has asked whether the person may: this room knows
 * branches, not projects. The caller writes the journal line in the same transaction.
 */
@Service
@Transactional
public class EvidenceStore {

    static final long BYTES_PER_PROJECT = 2L * 1024 * 1024 * 1024;

    private final StoredFiles files;
    private final EvidenceRows rows;
    private final EvidenceSettings settings;
    private final Clock clock;

    EvidenceStore(StoredFiles files, EvidenceRows rows, EvidenceSettings settings, Clock clock) {
        this.files = files;
        this.rows = rows;
        this.settings = settings;
        this.clock = clock;
    }

    /** What is stored of a file: its hash, and what a camera wrote into it. */
    private record Stored(
            byte[] hash,
            @Nullable LocalDateTime takenAt,
            @Nullable GeoLocation place) {}

    /** Keeps a file for a project of the branch (null: for the branch itself), or says why not. */
    public Keeping keep(UUID branchId, @Nullable UUID projectId, Upload upload, Actor by) {
        FileType.Verdict verdict = FileType.of(upload);
        if (verdict.isRefused()) {
            return new Keeping.Refused(verdict.refusal());
        }
        if (projectId != null && files.bytesOf(projectId) + upload.bytes().length > BYTES_PER_PROJECT) {
            return new Keeping.Refused(
                    "This project's papers have reached 2 GB. Bring only what is needed, or smaller photos.");
        }
        try {
            Stored stored = store(branchId, upload, verdict.type());
            GeoLocation place = stored.place != null && settings.keepsPhotoPlace(branchId) ? stored.place : null;
            return new Keeping.Kept(rows.insert(new EvidenceRows.NewRow(
                    Ids.next(),
                    branchId,
                    projectId,
                    verdict.type().kind(),
                    stored.hash,
                    name(upload.name()),
                    upload.caption().strip(),
                    stored.takenAt,
                    place,
                    null,
                    by,
                    clock.instant())));
        } catch (Photo.Unreadable damaged) {
            return new Keeping.Refused(String.valueOf(damaged.getMessage()));
        }
    }

    private Stored store(UUID branchId, Upload upload, FileType type) throws Photo.Unreadable {
        byte[] original = upload.bytes();
        Optional<byte[]> before = files.keptBefore(branchId, original);
        if (type.kind() != EvidenceKind.PHOTO) {
            byte[] hash = before.orElseGet(
                    () -> files.keep(branchId, original, original, null, type.mediaType(), clock.instant()));
            return new Stored(hash, null, null);
        }
        if (before.isPresent()) {
            // The camera's notes are no longer in what is kept, and these bytes were read once.
            return rows.notesOf(branchId, before.get())
                    .map(notes -> new Stored(before.get(), notes.takenAt(), notes.place()))
                    .orElse(new Stored(before.get(), null, null));
        }
        Photo photo = Photo.of(original, type);
        byte[] hash =
                files.keep(branchId, original, photo.bytes(), photo.thumbnail(), type.mediaType(), clock.instant());
        return new Stored(hash, photo.takenAt(), photo.place());
    }

    /** Keeps a signature, or says what is missing. */
    public Keeping sign(UUID branchId, @Nullable UUID projectId, NewSignature signature, Actor by) {
        if (signature.name().isBlank()) {
            return new Keeping.Refused("Write the name of the person who signs.");
        }
        try {
            byte[] drawn = null;
            Optional<byte[]> picture = signature.picture();
            if (picture.isPresent()) {
                drawn = store(branchId, new Upload("signature.png", picture.get(), ""), FileType.PNG).hash;
            }
            return new Keeping.Kept(rows.insert(new EvidenceRows.NewRow(
                    Ids.next(),
                    branchId,
                    projectId,
                    EvidenceKind.SIGNATURE,
                    drawn,
                    "Signature",
                    "",
                    null,
                    null,
                    signature,
                    by,
                    clock.instant())));
        } catch (IllegalArgumentException | Photo.Unreadable damaged) {
            return new Keeping.Refused("The drawn signature did not arrive whole. Sign again, or type the name only.");
        }
    }

    @Transactional(readOnly = true)
    public Optional<EvidenceFacts> find(UUID id) {
        return rows.find(id);
    }

    /** The file itself, for a page of another room that has asked whether it may be seen. Hidden ones have none. */
    @Transactional(readOnly = true)
    public Optional<EvidenceFile> file(UUID id) {
        return shown(id).flatMap(facts -> files.content(id)).map(EvidenceStore::file);
    }

    /** As {@link #file} for the small picture of a photo. */
    @Transactional(readOnly = true)
    public Optional<EvidenceFile> thumbnail(UUID id) {
        return shown(id).flatMap(facts -> files.thumbnail(id)).map(EvidenceStore::file);
    }

    private Optional<EvidenceFacts> shown(UUID id) {
        return rows.find(id).filter(facts -> !facts.hidden());
    }

    private static EvidenceFile file(StoredFiles.Content content) {
        return new EvidenceFile(content.bytes(), content.mediaType());
    }

    /** These pieces, in the order in which they came; ids that are not there are left out. */
    @Transactional(readOnly = true)
    public List<EvidenceFacts> of(Collection<UUID> ids) {
        return rows.ofIds(ids);
    }

    /** All of a project, newest first, hidden ones included and marked. */
    @Transactional(readOnly = true)
    public List<EvidenceFacts> ofProject(UUID projectId) {
        return rows.ofProject(projectId);
    }

    /** Takes it from sight; it stays kept. @return false if it was hidden already */
    public boolean hide(UUID id, String reason, Actor by) {
        return rows.hide(id, reason, by, clock.instant());
    }

    /** Shows it again: the opposite of hiding. @return false if it was not hidden */
    public boolean show(UUID id) {
        return rows.show(id);
    }

    private static String name(String given) {
        String last = given.substring(Math.max(given.lastIndexOf('/'), given.lastIndexOf('\\')) + 1)
                .replaceAll("\\p{Cntrl}", "")
                .strip();
        String known = last.isEmpty() ? "file" : last;
        return known.length() <= 160 ? known : known.substring(known.length() - 160);
    }
}
