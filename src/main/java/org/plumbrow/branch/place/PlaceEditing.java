package org.plumbrow.branch.place;

import java.sql.Types;
import java.util.UUID;
import org.plumbrow.branch.BranchFacts;
import org.plumbrow.branch.BranchFacts.Yard;
import org.plumbrow.branch.BranchSettings;
import org.plumbrow.branch.ChangeLog;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Changes what a branch is called, where it lives, and how its crews drive. */
@Service
@Transactional
public class PlaceEditing {

    private static final String NAME =
            "update branch set version = version + 1, name = :name, zone = :zone where id = :branch and version = :version";
    private static final String TRAVEL = """
            update branch_setting
               set yard_address = :address, yard_latitude_deg = :latitude, yard_longitude_deg = :longitude,
                   travel_speed_mph = :speed, travel_road_factor = :factor
             where branch_id = :branch
            """;

    private final JdbcClient jdbc;
    private final BranchSettings settings;
    private final Access access;
    private final ChangeLog log;

    PlaceEditing(JdbcClient jdbc, BranchSettings settings, Access access, ChangeLog log) {
        this.jdbc = jdbc;
        this.settings = settings;
        this.access = access;
        this.log = log;
    }

    /** @throws EditedMeanwhile if somebody else changed it since that version */
    public void change(UUID branchId, long version, PlaceTerms terms) {
        access.require(branchId, May.CHANGE_SETTINGS);
        BranchFacts before = settings.facts(branchId);
        int changed = jdbc.sql(NAME)
                .param("name", terms.name())
                .param("zone", terms.zone().getId())
                .param("branch", branchId)
                .param("version", version)
                .update();
        if (changed == 0) {
            throw new EditedMeanwhile(version, before.version());
        }
        jdbc.sql(TRAVEL)
                .param("address", terms.yard().map(Yard::address).orElse(null), Types.VARCHAR)
                .param("latitude", terms.yard().map(Yard::latitudeDeg).orElse(null), Types.DOUBLE)
                .param("longitude", terms.yard().map(Yard::longitudeDeg).orElse(null), Types.DOUBLE)
                .param("speed", terms.travel().speedMph())
                .param("factor", terms.travel().roadFactor())
                .param("branch", branchId)
                .update();
        log.changed(
                branchId, access.actor(), "the branch", PlaceTerms.of(before).written(), terms.written());
    }
}
