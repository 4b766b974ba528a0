package org.plumbrow.design.equipment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.database.Ids;
import org.plumbrow.design.part.Cells;
import org.plumbrow.web.Access;
import org.plumbrow.web.EditedMeanwhile;
import org.plumbrow.web.May;
import org.plumbrow.web.NotFound;
import org.plumbrow.web.Refusal;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.databind.json.JsonMapper;

/** Modules and inverters that a branch designs with: generic ones of the program and its own. Nothing is ever deleted. */
@Service
@Transactional
public class Catalogue {

    private final JdbcClient jdbc;
    private final JsonMapper json;
    private final Access access;

    Catalogue(JdbcClient jdbc, JsonMapper json, Access access) {
        this.jdbc = jdbc;
        this.json = json;
        this.access = access;
    }

    /** All entries of a branch by name, ended ones too; asks nobody whether they may. */
    @Transactional(readOnly = true)
    public Map<EquipmentKind, Map<String, Entry>> all(UUID branchId) {
        List<Entry> entries = new ArrayList<>();
        for (EquipmentKind kind : EquipmentKind.values()) {
            entries.addAll(Shipped.of(kind));
        }
        entries.addAll(jdbc.sql("select id, kind, content, version, ended from equipment where branch_id = ?")
                .param(branchId)
                .query(this::entry)
                .list());
        Map<EquipmentKind, Map<String, Entry>> all = new LinkedHashMap<>();
        for (EquipmentKind kind : EquipmentKind.values()) {
            Map<String, Entry> byName = new LinkedHashMap<>();
            entries.stream()
                    .filter(entry -> entry.kind() == kind)
                    .sorted(Comparator.comparing(Entry::name))
                    .forEach(entry -> byName.put(entry.name(), entry));
            all.put(kind, byName);
        }
        return all;
    }

    /** For the pages. */
    @Transactional(readOnly = true)
    public List<Entry> list(UUID branchId, EquipmentKind kind) {
        access.require(branchId, May.SEE_DESIGN);
        return List.copyOf(all(branchId).getOrDefault(kind, Map.of()).values());
    }

    /** @throws NotFound for another branch's */
    @Transactional(readOnly = true)
    public Entry entry(UUID branchId, UUID id) {
        access.require(branchId, May.SEE_DESIGN);
        return jdbc.sql("select id, kind, content, version, ended from equipment where id = ? and branch_id = ?")
                .param(id)
                .param(branchId)
                .query(this::entry)
                .optional()
                .orElseThrow(NotFound::new);
    }

    private Entry entry(ResultSet row, int number) throws SQLException {
        return new Entry(
                row.getObject("id", UUID.class),
                EquipmentKind.valueOf(row.getString("kind")),
                json.readValue(row.getString("content"), Cells.class),
                row.getLong("version"),
                row.getBoolean("ended"));
    }

    public Optional<Refusal> add(UUID branchId, EquipmentKind kind, Cells cells) {
        access.require(branchId, May.WRITE_DESIGN);
        return nameTaken(branchId, kind, cells, null).or(() -> {
            jdbc.sql("insert into equipment (id, branch_id, kind, name, content) values (?, ?, ?, ?, cast(? as jsonb))")
                    .param(Ids.next())
                    .param(branchId)
                    .param(kind.name())
                    .param(cells.text("name"))
                    .param(json.writeValueAsString(cells))
                    .update();
            return Optional.empty();
        });
    }

    /** @throws EditedMeanwhile if somebody was faster */
    public Optional<Refusal> change(UUID branchId, UUID id, long version, Cells cells) {
        access.require(branchId, May.WRITE_DESIGN);
        Entry before = entry(branchId, id);
        Optional<Refusal> taken = nameTaken(branchId, before.kind(), cells, id);
        if (taken.isPresent()) {
            return taken;
        }
        written(
                jdbc.sql("""
                        update equipment set name = :name, content = cast(:content as jsonb), version = version + 1
                         where id = :id and version = :version
                        """)
                        .param("name", cells.text("name"))
                        .param("content", json.writeValueAsString(cells))
                        .param("id", id)
                        .param("version", version)
                        .update(),
                version,
                before);
        return Optional.empty();
    }

    /** No longer offered, or offered again. @throws EditedMeanwhile if somebody was faster */
    public void offer(UUID branchId, UUID id, long version, boolean ended) {
        access.require(branchId, May.WRITE_DESIGN);
        Entry before = entry(branchId, id);
        written(
                jdbc.sql("update equipment set ended = ?, version = version + 1 where id = ? and version = ?")
                        .param(ended)
                        .param(id)
                        .param(version)
                        .update(),
                version,
                before);
    }

    private static void written(int rows, long version, Entry now) {
        if (rows == 0) {
            throw new EditedMeanwhile(version, now.version());
        }
    }

    private Optional<Refusal> nameTaken(
            UUID branchId, EquipmentKind kind, Cells cells, @org.jspecify.annotations.Nullable UUID own) {
        return all(branchId).getOrDefault(kind, Map.of()).values().stream()
                .filter(entry -> entry.name().equalsIgnoreCase(cells.text("name")))
                .filter(entry -> own == null || !own.equals(entry.id()))
                .findFirst()
                .map(entry -> new Refusal(
                        "rows[0].cells[name]",
                        "The catalogue has “" + entry.name() + "” already. Choose another name."));
    }
}
