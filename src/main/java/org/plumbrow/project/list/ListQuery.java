package org.plumbrow.project.list;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.plumbrow.project.ProjectWords;

/**
 * The condition of a list as SQL with named values. Each comparison is leakproof, so that the wall between branches
 * does not keep it from its index.
 */
record ListQuery(String where, Map<String, Object> values) {

    private static final int MOST_WORDS = 6;

    /**
     * @param me who asks
     * @param reached the projects that a crew lead may see; null for everybody else
     */
    static ListQuery of(
            ListFilter filter, UUID branchId, UUID me, @org.jspecify.annotations.Nullable Set<UUID> reached) {
        List<String> conditions = new ArrayList<>();
        Map<String, Object> values = new HashMap<>();
        add(conditions, values, "l.branch_id = :branch", "branch", branchId);
        if (filter.shown() != Show.ALL) {
            add(conditions, values, "l.shown = :shown", "shown", filter.shown().name());
        }
        filter.stageOrder().ifPresent(order -> add(conditions, values, "l.stage_order = :stage", "stage", order));
        if (filter.byMe()) {
            add(conditions, values, "l.manager_id = :manager", "manager", me);
        } else if (filter.byNobody()) {
            conditions.add("l.manager_name is null");
        }
        filter.managerId().ifPresent(id -> add(conditions, values, "l.manager_id = :manager", "manager", id));
        filter.utilityId().ifPresent(id -> add(conditions, values, "l.utility_id = :utility", "utility", id));
        filter.crewId().ifPresent(id -> add(conditions, values, """
                        exists (select 1 from project_line_crew c where c.branch_id = l.branch_id
                                   and c.project_id = l.project_id and c.crew_id = :crew)""", "crew", id));
        filter.isLate().ifPresent(late -> conditions.add(late ? "l.late" : "not l.late"));
        if (reached != null) {
            add(conditions, values, "l.project_id = any (:reached)", "reached", reached.toArray(new UUID[0]));
        }
        addWords(filter, conditions, values);
        return new ListQuery(String.join("\n   and ", conditions), values);
    }

    /** Each word must begin a word of the project. */
    private static void addWords(ListFilter filter, List<String> conditions, Map<String, Object> values) {
        List<String> words =
                ProjectWords.in(filter.words()).stream().limit(MOST_WORDS).toList();
        for (int i = 0; i < words.size(); i++) {
            conditions.add("""
                    exists (select 1 from project_word w where w.branch_id = l.branch_id and w.project_id = l.project_id
                               and w.word >= :from%1$d and w.word < :to%1$d)""".formatted(i));
            values.put("from" + i, words.get(i));
            values.put("to" + i, words.get(i) + Character.toString(Character.MAX_CODE_POINT));
        }
        if (words.isEmpty() && !filter.words().isEmpty()) {
            conditions.add("false");
        }
    }

    private static void add(
            List<String> conditions, Map<String, Object> values, String condition, String name, Object value) {
        conditions.add(condition);
        values.put(name, value);
    }
}
