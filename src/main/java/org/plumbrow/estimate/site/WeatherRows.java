package org.plumbrow.estimate.site;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.calc.energy.sun.Place;
import org.plumbrow.calc.energy.weather.MonthlyMeans;
import org.plumbrow.calc.energy.weather.WeatherYear.Origin;
import org.plumbrow.web.Actor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** The rows of the weather library. */
@Component
class WeatherRows {

    private static final String CARD =
            "select id, branch_id, version, name, origin, station, latitude_deg, longitude_deg, elevation_m, utc_offset_h,"
                    + " invented, evidence_id, summary, added_at, added_by, ended_at from weather_source ";

    private final JdbcClient jdbc;
    private final JsonMapper json;

    WeatherRows(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    /** Where the hours of a new source come from: one of the two. */
    record From(
            @Nullable UUID evidenceId,
            byte @Nullable [] sha256,
            @Nullable MonthlyMeans means) {}

    void insert(WeatherCard card, From from, Actor by) {
        jdbc.sql("""
                insert into weather_source (id, branch_id, name, origin, station, latitude_deg, longitude_deg, elevation_m,
                       utc_offset_h, invented, evidence_id, sha256, means, summary, added_at, added_by_person_id, added_by)
                values (:id, :branch, :name, :origin, :station, :latitude, :longitude, :elevation, :offset, :invented,
                       :evidence, :hash, cast(:means as jsonb), cast(:summary as jsonb), :at, :person, :by)
                """)
                .param("id", card.id())
                .param("branch", card.branchId())
                .param("name", card.name())
                .param("origin", card.origin().name())
                .param("station", card.station())
                .param("latitude", card.place().latitudeDeg())
                .param("longitude", card.place().longitudeDeg())
                .param("elevation", card.place().elevationM())
                .param("offset", card.place().utcOffsetHours())
                .param("invented", card.invented())
                .param("evidence", from.evidenceId(), java.sql.Types.OTHER)
                .param("hash", from.sha256(), java.sql.Types.BINARY)
                .param(
                        "means",
                        from.means() == null ? null : json.writeValueAsString(from.means()),
                        java.sql.Types.VARCHAR)
                .param("summary", json.writeValueAsString(card.summary()))
                .param("at", OffsetDateTime.ofInstant(card.addedAt(), ZoneOffset.UTC))
                .param("person", by.personId(), java.sql.Types.OTHER)
                .param("by", by.name())
                .update();
    }

    List<WeatherCard> ofBranch(UUID branchId) {
        return jdbc.sql(CARD + "where branch_id = ? order by ended_at nulls first, lower(name)")
                .param(branchId)
                .query(this::card)
                .list();
    }

    Optional<WeatherCard> find(UUID id) {
        return jdbc.sql(CARD + "where id = ?").param(id).query(this::card).optional();
    }

    Optional<MonthlyMeans> means(UUID id) {
        return jdbc.sql("select means from weather_source where id = ? and means is not null")
                .param(id)
                .query(String.class)
                .optional()
                .map(text -> json.readValue(text, MonthlyMeans.class));
    }

    Optional<String> nameOf(UUID branchId, byte[] sha256) {
        return jdbc.sql("select name from weather_source where branch_id = ? and sha256 = ? and ended_at is null")
                .params(branchId, sha256)
                .query(String.class)
                .optional();
    }

    /** @return false if somebody was faster */
    boolean rename(UUID id, long version, String name, boolean invented) {
        return jdbc.sql("update weather_source set name = ?, invented = ?, version = version + 1"
                                + " where id = ? and version = ?")
                        .params(name, invented, id, version)
                        .update()
                == 1;
    }

    void end(UUID id, @Nullable Instant at) {
        jdbc.sql("update weather_source set ended_at = ?, version = version + 1 where id = ?")
                .params(at == null ? null : OffsetDateTime.ofInstant(at, ZoneOffset.UTC), id)
                .update();
    }

    int usedBy(UUID id) {
        return jdbc.sql("select count(*) from yield_setting where weather_id = ?")
                .param(id)
                .query(Integer.class)
                .single();
    }

    private WeatherCard card(ResultSet row, int number) throws SQLException {
        OffsetDateTime ended = row.getObject("ended_at", OffsetDateTime.class);
        return new WeatherCard(
                row.getObject("id", UUID.class),
                row.getObject("branch_id", UUID.class),
                row.getLong("version"),
                row.getString("name"),
                Origin.valueOf(row.getString("origin")),
                row.getString("station"),
                new Place(
                        row.getDouble("latitude_deg"),
                        row.getDouble("longitude_deg"),
                        row.getDouble("elevation_m"),
                        row.getDouble("utc_offset_h")),
                row.getBoolean("invented"),
                row.getObject("evidence_id", UUID.class),
                json.readValue(row.getString("summary"), WeatherSummary.class),
                row.getObject("added_at", OffsetDateTime.class).toInstant(),
                row.getString("added_by"),
                ended == null ? null : ended.toInstant());
    }
}
