package org.plumbrow.survey;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.plumbrow.database.Ids;
import org.plumbrow.evidence.EvidenceFacts;
import org.plumbrow.evidence.EvidenceStore;
import org.plumbrow.evidence.Keeping;
import org.plumbrow.evidence.Upload;
import org.plumbrow.project.Journal;
import org.plumbrow.project.JournalEvent;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.web.Access;
import org.plumbrow.web.May;
import org.plumbrow.web.Refusal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The photos of a survey by item of the list; where a subject does not exist on the site, the reason instead. */
@Service
@Transactional
public class SurveyPhotos {

    private static final int LONGEST = 200;

    private final JdbcClient jdbc;
    private final EvidenceStore evidence;
    private final ProjectAccess projectAccess;
    private final Access access;
    private final Journal journal;
    private final SurveyRows rows;

    SurveyPhotos(
            JdbcClient jdbc,
            EvidenceStore evidence,
            ProjectAccess projectAccess,
            Access access,
            Journal journal,
            SurveyRows rows) {
        this.jdbc = jdbc;
        this.evidence = evidence;
        this.projectAccess = projectAccess;
        this.access = access;
        this.journal = journal;
        this.rows = rows;
    }

    /** @param absent why there is none; null where there is one, or nothing was said */
    record Kept(List<EvidenceFacts> photos, @Nullable String absent) {
        static final Kept NOTHING = new Kept(List.of(), null);

        boolean isAnswered() {
            return !photos.isEmpty() || absent != null;
        }
    }

    private record Row(
            int item, @Nullable UUID evidenceId, @Nullable String reason) {}

    private List<Row> rows(UUID projectId) {
        return jdbc.sql("select item, evidence_id, reason from survey_photo where project_id = ? order by at, id")
                .param(projectId)
                .query(Row.class)
                .list();
    }

    /** By number of the item; hidden photos do not count. Two queries. */
    @Transactional(readOnly = true)
    Map<Integer, Kept> of(UUID projectId) {
        List<Row> all = rows(projectId);
        Set<UUID> ids = all.stream()
                .map(Row::evidenceId)
                .filter(java.util.Objects::nonNull)
                .collect(Collectors.toSet());
        Map<UUID, EvidenceFacts> shown = ids.isEmpty() ? Map.of() : shown(ids);
        Map<Integer, Kept> byItem = new TreeMap<>();
        for (Row row : all) {
            Kept now = byItem.getOrDefault(row.item, Kept.NOTHING);
            byItem.put(row.item, with(now, row, shown));
        }
        return byItem;
    }

    private Map<UUID, EvidenceFacts> shown(Collection<UUID> ids) {
        Map<UUID, EvidenceFacts> shown = new HashMap<>();
        evidence.of(ids).stream().filter(one -> !one.hidden()).forEach(one -> shown.put(one.id(), one));
        return shown;
    }

    private static Kept with(Kept now, Row row, Map<UUID, EvidenceFacts> shown) {
        if (row.reason != null) {
            return new Kept(now.photos, row.reason);
        }
        List<EvidenceFacts> photos = new ArrayList<>(now.photos);
        Optional.ofNullable(row.evidenceId).map(shown::get).ifPresent(photos::add);
        return new Kept(List.copyOf(photos), now.absent);
    }

    /** Numbers of the items with a photo, or with a reason why there is none. */
    @Transactional(readOnly = true)
    Set<Integer> answered(UUID projectId) {
        Set<Integer> answered = new TreeSet<>();
        of(projectId).forEach((item, kept) -> {
            if (kept.isAnswered()) {
                answered.add(item);
            }
        });
        return answered;
    }

    /** Numbers and words of the items that a project's survey brings, for whoever brings whole surveys. */
    @Transactional(readOnly = true)
    public Map<Integer, String> asked(ProjectFacts project) {
        Map<Integer, String> asked = new TreeMap<>();
        PhotoItem.of(project).forEach(item -> asked.put(item.number(), item.words()));
        return asked;
    }

    /** As the page's own: a photo for an item, or what is wrong with it. */
    public Optional<Refusal> add(UUID projectId, int item, Upload upload) {
        return add(projectId, PhotoItem.numbered(item).orElseThrow(), upload);
    }

    /** As the page's own: the subject of this item does not exist on the site. */
    public Optional<Refusal> absent(UUID projectId, int item, String reason) {
        return absent(projectId, PhotoItem.numbered(item).orElseThrow(), reason);
    }

    Optional<Refusal> add(UUID projectId, PhotoItem item, @Nullable Upload upload) {
        UUID branchId = projectAccess.require(projectId, May.WRITE_SURVEY);
        if (upload == null || upload.bytes().length == 0) {
            return Optional.of(new Refusal("photo", "Take or choose a photo first."));
        }
        Keeping kept = evidence.keep(branchId, projectId, upload, access.actor());
        if (kept instanceof Keeping.Refused refused) {
            return Optional.of(new Refusal("photo", refused.sentence()));
        }
        forgetReason(projectId, item);
        insert(branchId, projectId, item, ((Keeping.Kept) kept).evidence().id(), null);
        note(projectId, "survey.photo", "Survey: photo of " + decapitalised(item) + ".");
        return Optional.empty();
    }

    /** Says that the subject does not exist on this site. */
    Optional<Refusal> absent(UUID projectId, PhotoItem item, String typed) {
        UUID branchId = projectAccess.require(projectId, May.WRITE_SURVEY);
        String reason = typed.strip();
        if (reason.isEmpty() || reason.length() > LONGEST) {
            return Optional.of(new Refusal("reason", "Write why it does not exist here, in at most 200 characters."));
        }
        forgetReason(projectId, item);
        insert(branchId, projectId, item, null, reason);
        note(projectId, "survey.photo", "Survey: no photo of " + decapitalised(item) + ", it does not exist here.");
        return Optional.empty();
    }

    /** Takes back that the subject does not exist. */
    void presentAfterAll(UUID projectId, PhotoItem item) {
        projectAccess.require(projectId, May.WRITE_SURVEY);
        if (forgetReason(projectId, item)) {
            note(projectId, "survey.photo", "Survey: a photo of " + decapitalised(item) + " is needed after all.");
        }
    }

    private boolean forgetReason(UUID projectId, PhotoItem item) {
        return jdbc.sql("delete from survey_photo where project_id = ? and item = ? and reason is not null")
                        .params(projectId, item.number())
                        .update()
                > 0;
    }

    private void insert(
            UUID branchId, UUID projectId, PhotoItem item, @Nullable UUID evidenceId, @Nullable String reason) {
        jdbc.sql("""
                insert into survey_photo (id, branch_id, project_id, item, evidence_id, reason, at, by_name)
                values (:id, :branch, :project, :item, :evidence, :reason, :at, :by)
                """)
                .param("id", Ids.next())
                .param("branch", branchId)
                .param("project", projectId)
                .param("item", item.number())
                .param("evidence", evidenceId, java.sql.Types.OTHER)
                .param("reason", reason, java.sql.Types.VARCHAR)
                .param("at", SurveyRows.at(rows.now()))
                .param("by", access.actor().name())
                .update();
    }

    private void note(UUID projectId, String kind, String sentence) {
        journal.append(JournalEvent.of(projectId, kind, sentence), access.actor(), rows.now());
    }

    private static String decapitalised(PhotoItem item) {
        return item.words().substring(0, 1).toLowerCase(java.util.Locale.ROOT)
                + item.words().substring(1);
    }
}
