package org.plumbrow.project;

import java.util.Locale;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps a project's row of the list and its words for finding true to the project, in the transaction of each change. */
@Repository
class ProjectLines {

    private static final String OWN_COLUMNS = """
            insert into project_line (project_id, branch_id, shown, number, number_year, running_number, name, name_sorted,
                                      place, stage, stage_order, mounting, system_kw_dc, utility_id, manager_id,
                                      manager_name, milestone, promised_on, tolerance_days, late)
            select p.id, p.branch_id,
                   case when p.standing <> 'OPEN' then p.standing
                        when p.stage = 'COMMISSIONED' then 'COMMISSIONED' else 'UNDER_WAY' end,
                   p.number, p.number_year, p.running_number, p.name, :sorted, :place, p.stage, :stageOrder,
                   cast(:mounting as text), c.system_kw_dc, s.utility_id, pm.person_id, pm.name,
                   pr.milestone, pr.promised_on, coalesce(pr.tolerance_days, 0), false
              from project p
              join project_site s on s.project_id = p.id
              join project_contract c on c.project_id = p.id
              left join project_duty pm on pm.project_id = p.id and pm.duty = 'PROJECT_MANAGER'
              left join lateral (select * from project_promise x where x.project_id = p.id
                                  order by x.position desc limit 1) pr on true
             where p.id = :project
            on conflict (project_id) do update
               set shown = excluded.shown, name = excluded.name, name_sorted = excluded.name_sorted,
                   place = excluded.place, stage = excluded.stage, stage_order = excluded.stage_order,
                   mounting = excluded.mounting, system_kw_dc = excluded.system_kw_dc,
                   utility_id = excluded.utility_id, manager_id = excluded.manager_id,
                   manager_name = excluded.manager_name, milestone = excluded.milestone,
                   promised_on = excluded.promised_on, tolerance_days = excluded.tolerance_days,
                   late = coalesce(project_line.planned_on > excluded.promised_on + excluded.tolerance_days, false)
            """;

    private final JdbcClient jdbc;
    private final ProjectRows rows;

    ProjectLines(JdbcClient jdbc, ProjectRows rows) {
        this.jdbc = jdbc;
        this.rows = rows;
    }

    /** Writes the row anew from what stands in the project's own tables; what later rooms told stays. */
    void refresh(UUID projectId) {
        ProjectFacts facts = rows.ofIds(Set.of(projectId)).get(0);
        jdbc.sql(OWN_COLUMNS)
                .param("project", projectId)
                .param("sorted", facts.name().toLowerCase(Locale.ROOT))
                .param("place", facts.site().address())
                .param("stageOrder", Stage.orderOf(facts.stage()))
                .param("mounting", facts.contract().mounting().map(Enum::name).orElse(null))
                .update();
        refreshWords(facts);
    }

    private void refreshWords(ProjectFacts facts) {
        Set<String> words = ProjectWords.of(facts);
        jdbc.sql("delete from project_word where project_id = :project and word not in (:words)")
                .param("project", facts.id())
                .param("words", words)
                .update();
        jdbc.sql("""
                insert into project_word (branch_id, word, project_id)
                select :branch, word, :project from unnest(cast(:words as text[])) word on conflict do nothing
                """)
                .param("branch", facts.branchId())
                .param("project", facts.id())
                .param("words", words.toArray(new String[0]))
                .update();
    }
}
