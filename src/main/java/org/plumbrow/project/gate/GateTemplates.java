package org.plumbrow.project.gate;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.Duty;
import org.plumbrow.project.Stage;
import org.plumbrow.web.EditedMeanwhile;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The checklists of a branch: the shipped ones, as far as the branch has not changed them, and items of its own. */
@Repository
class GateTemplates {

    private static final int FIRST_OWN = 101;

    private final JdbcClient jdbc;

    GateTemplates(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What the branch changed of an item; of its own items everything. */
    private record Change(
            String item,
            long version,
            boolean own,
            boolean switchedOff,
            String words,
            String hint,
            String unit,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high,
            boolean required,
            @Nullable String kinds,
            @Nullable String condition,
            @Nullable String duty) {

        static Change of(ResultSet row, int number) throws SQLException {
            return new Change(
                    row.getString("item"),
                    row.getLong("version"),
                    row.getBoolean("own"),
                    row.getBoolean("switched_off"),
                    row.getString("words"),
                    row.getString("hint"),
                    row.getString("unit"),
                    row.getBigDecimal("low"),
                    row.getBigDecimal("high"),
                    row.getBoolean("required"),
                    row.getString("kinds"),
                    row.getString("condition"),
                    row.getString("duty"));
        }

        TemplateItem over(AskedItem shipped) {
            AskedItem asked = new AskedItem(
                    shipped.code(),
                    words,
                    hint,
                    shipped.kinds(),
                    unit,
                    low,
                    high,
                    shipped.least(),
                    shipped.condition(),
                    required,
                    shipped.safety(),
                    shipped.duty());
            return new TemplateItem(asked, version, false, switchedOff);
        }

        TemplateItem alone() {
            AskedItem asked = new AskedItem(
                    item,
                    words,
                    hint,
                    AnswerKind.read(String.valueOf(kinds)),
                    unit,
                    low,
                    high,
                    1,
                    Condition.read(String.valueOf(condition), ""),
                    required,
                    false,
                    Duty.valueOf(String.valueOf(duty)));
            return new TemplateItem(asked, version, true, switchedOff);
        }
    }

    /** Every item of the branch, those switched off included, in the order of gates and numbers; one query. */
    List<TemplateItem> all(UUID branchId) {
        Map<String, Change> changes = new HashMap<>();
        jdbc.sql("select * from gate_template_item where branch_id = ?")
                .param(branchId)
                .query(Change::of)
                .list()
                .forEach(change -> changes.put(change.item, change));
        List<TemplateItem> items = new ArrayList<>();
        for (AskedItem shipped : ShippedItems.all()) {
            Change change = changes.remove(shipped.code());
            items.add(change == null ? new TemplateItem(shipped, 0, false, false) : change.over(shipped));
        }
        changes.values().stream().filter(Change::own).map(Change::alone).forEach(items::add);
        items.sort(Comparator.comparing((TemplateItem item) -> item.asked().stage())
                .thenComparing(item -> item.asked().number()));
        return items;
    }

    /** What a branch asks of its projects now: without what it switched off. */
    List<AskedItem> asked(UUID branchId) {
        return all(branchId).stream()
                .filter(item -> !item.switchedOff())
                .map(TemplateItem::asked)
                .toList();
    }

    /** @throws EditedMeanwhile if somebody was faster */
    void change(UUID branchId, TemplateItem before, GateChecklists.Choice to, long seen) {
        EditedMeanwhile.check(seen, before.version());
        int written = jdbc.sql("""
                insert into gate_template_item as t (branch_id, item, version, own, switched_off, words, hint, unit, low, high,
                                                     required)
                values (:branch, :item, 1, false, :off, :words, :hint, :unit, cast(:low as numeric),
                        cast(:high as numeric), :required)
                on conflict (branch_id, item) do update
                   set version = t.version + 1, switched_off = excluded.switched_off, words = excluded.words,
                       hint = excluded.hint, unit = excluded.unit, low = excluded.low, high = excluded.high,
                       required = excluded.required
                 where t.version = :seen
                """)
                .param("branch", branchId)
                .param("item", before.asked().code())
                .param("off", !to.asked())
                .param("words", to.words().strip())
                .param("hint", to.hint().strip())
                .param("unit", to.unit().strip())
                .param("low", to.low())
                .param("high", to.high())
                .param("required", to.required())
                .param("seen", seen)
                .update();
        if (written == 0) {
            throw new EditedMeanwhile(seen, seen + 1);
        }
    }

    /** Adds an item of the branch's own. */
    void add(UUID branchId, AskedItem item, boolean switchedOff) {
        jdbc.sql("""
                insert into gate_template_item (branch_id, item, version, own, switched_off, words, hint, unit, low, high,
                                                required, kinds, condition, duty)
                values (:branch, :item, 1, true, :off, :words, :hint, :unit, cast(:low as numeric), cast(:high as numeric),
                        :required, :kinds, :condition, :duty)
                """)
                .param("branch", branchId)
                .param("item", item.code())
                .param("off", switchedOff)
                .param("words", item.words())
                .param("hint", item.hint())
                .param("unit", item.unit())
                .param("low", item.low())
                .param("high", item.high())
                .param("required", item.required())
                .param("kinds", AnswerKind.write(item.kinds()))
                .param("condition", item.condition().writtenSites())
                .param("duty", item.duty().name())
                .update();
    }

    /** The code of the branch's next own item at a gate; they are numbered from 101. */
    String nextOwn(UUID branchId, Stage stage) {
        int last = all(branchId).stream()
                .filter(item -> item.own() && item.asked().stage() == stage)
                .mapToInt(item -> item.asked().number())
                .max()
                .orElse(FIRST_OWN - 1);
        return stage.name().toLowerCase(Locale.ROOT) + "." + (last + 1);
    }

    static List<AskedItem> of(Stage stage, List<AskedItem> items) {
        return items.stream().filter(item -> item.stage() == stage).toList();
    }
}
