package org.plumbrow.evidence;

import java.util.List;
import java.util.UUID;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.branch.Written;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Whether a branch keeps where a photo was taken: not unless it says so. */
@Service
@Transactional
class EvidenceSettings {

    private final JdbcClient jdbc;
    private final Access access;
    private final ChangeLog log;

    EvidenceSettings(JdbcClient jdbc, Access access, ChangeLog log) {
        this.jdbc = jdbc;
        this.access = access;
        this.log = log;
    }

    /** @param version 0 while the branch has never said */
    record Choice(boolean keepsPhotoPlace, long version) {}

    @Transactional(readOnly = true)
    public Choice of(UUID branchId) {
        return jdbc.sql("select keeps_photo_place, version from evidence_setting where branch_id = ?")
                .param(branchId)
                .query((row, n) -> new Choice(row.getBoolean("keeps_photo_place"), row.getLong("version")))
                .optional()
                .orElse(new Choice(false, 0));
    }

    @Transactional(readOnly = true)
    public boolean keepsPhotoPlace(UUID branchId) {
        return of(branchId).keepsPhotoPlace;
    }

    public void choose(UUID branchId, boolean keeps, long openedVersion) {
        access.require(branchId, May.CHANGE_SETTINGS);
        Choice before = of(branchId);
        EditedMeanwhile.check(openedVersion, before.version);
        jdbc.sql("""
                insert into evidence_setting (branch_id, keeps_photo_place, version) values (?, ?, 1)
                on conflict (branch_id) do update set keeps_photo_place = excluded.keeps_photo_place,
                                                      version = evidence_setting.version + 1
                """).params(branchId, keeps).update();
        log.changed(branchId, access.actor(), "photos", written(before.keepsPhotoPlace), written(keeps));
    }

    /** The one field, for the change log and for theirs beside yours. */
    static List<Written> written(boolean keeps) {
        return List.of(
                Written.of("Place where a photo was taken", "keepsPhotoPlace", keeps, keeps ? "kept" : "not kept"));
    }
}
