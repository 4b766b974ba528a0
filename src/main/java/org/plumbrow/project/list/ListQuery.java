package org.plumbrow.project.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.ProjectWords;
import org.springframework.jdbc.core.simple.JdbcClient.StatementSpec;

/**
 * The condition of a list as SQL, each part with the value that it names. Each comparison is leakproof, so that the wall
 * between branches does not keep it from its index.
 */
final class ListQuery {

    private static final int MOST_WORDS = 6;

    private final List<String> conditions = new ArrayList<>();
    private final List<UnaryOperator<StatementSpec>> values = new ArrayList<>();

    private ListQuery() {}

    /**
     * @param me who asks
     * @param reached the projects that a crew lead may see; null for everybody else
     */
    static ListQuery of(ListFilter filter, UUID branchId, UUID me, @Nullable Set<UUID> reached) {
        ListQuery query = new ListQuery();
        query.add("l.branch_id = :branch", named -> named.param("branch", branchId));
        if (filter.shown() != Show.ALL) {
            query.add(
                    "l.shown = :shown",
                    named -> named.param("shown", filter.shown().name()));
        }
        filter.stageOrder()
                .ifPresent(order -> query.add("l.stage_order = :stage", named -> named.param("stage", order)));
        query.addManager(filter, me);
        filter.utilityId().ifPresent(id -> query.add("l.utility_id = :utility", named -> named.param("utility", id)));
        filter.crewId().ifPresent(id -> query.add("""
                exists (select 1 from project_line_crew c where c.branch_id = l.branch_id
                           and c.project_id = l.project_id and c.crew_id = :crew)""", named -> named.param("crew", id)));
        filter.isLate().ifPresent(late -> query.add(late ? "l.late" : "not l.late"));
        if (reached != null) {
            UUID[] ids = reached.toArray(new UUID[0]);
            query.add("l.project_id = any (:reached)", named -> named.param("reached", ids));
        }
        query.addWords(filter);
        return query;
    }

    private void addManager(ListFilter filter, UUID me) {
        if (filter.byMe()) {
            add("l.manager_id = :manager", named -> named.param("manager", me));
        } else if (filter.byNobody()) {
            add("l.manager_name is null");
        }
        filter.managerId().ifPresent(id -> add("l.manager_id = :manager", named -> named.param("manager", id)));
    }

    /** Each word must begin a word of the project. */
    private void addWords(ListFilter filter) {
        List<String> words =
                ProjectWords.in(filter.words()).stream().limit(MOST_WORDS).toList();
        for (int i = 0; i < words.size(); i++) {
            addWord("from" + i, "to" + i, words.get(i));
        }
        if (words.isEmpty() && !filter.words().isEmpty()) {
            add("false");
        }
    }

    private void addWord(String from, String to, String word) {
        add(
                """
                exists (select 1 from project_word w where w.branch_id = l.branch_id and w.project_id = l.project_id
                           and w.word >= :%s and w.word < :%s)""".formatted(from, to),
                named -> named.param(from, word).param(to, word + Character.toString(Character.MAX_CODE_POINT)));
    }

    private void add(String condition, UnaryOperator<StatementSpec> value) {
        conditions.add(condition);
        values.add(value);
    }

    private void add(String condition) {
        conditions.add(condition);
    }

    String where() {
        return String.join("\n   and ", conditions);
    }

    /** The statement with all values that the condition names. */
    StatementSpec in(StatementSpec statement) {
        StatementSpec named = statement;
        for (UnaryOperator<StatementSpec> value : values) {
            named = value.apply(named);
        }
        return named;
    }
}
