package org.plumbrow.project.gate;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.Duty;
import org.plumbrow.project.Stage;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The checklists of a branch: the shipped ones, as far as the branch has not changed them, and items of its own. */
@Repository
class GateTemplates {

    private final JdbcClient jdbc;

    GateTemplates(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * An item as the branch has it.
     *
     * @param version 0 for a shipped item that was never changed
     * @param own made by the branch
     */
    record TemplateItem(AskedItem asked, long version, boolean own, boolean switchedOff) {}

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
        items.sort(Comparator.comparing((TemplateItem item) -> item.asked.stage())
                .thenComparing(item -> item.asked.number()));
        return items;
    }

    /** What a branch asks of its projects now: without what it switched off. */
    List<AskedItem> asked(UUID branchId) {
        return all(branchId).stream()
                .filter(item -> !item.switchedOff)
                .map(TemplateItem::asked)
                .toList();
    }

    static List<AskedItem> of(Stage stage, List<AskedItem> items) {
        return items.stream().filter(item -> item.stage() == stage).toList();
    }
}
