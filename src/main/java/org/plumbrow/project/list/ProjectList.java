package org.plumbrow.project.list;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.ProjectAccess;
import org.plumbrow.web.Access;
import org.plumbrow.web.BranchCard;
import org.plumbrow.web.May;
import org.plumbrow.web.NaturalOrder;
import org.plumbrow.web.Option;
import org.plumbrow.web.Paging;
import org.plumbrow.web.SecurityEvent;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.core.simple.JdbcClient.StatementSpec;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Finds the projects of the branch being looked at: one query reads a page, one counts. */
@Service
@Transactional(readOnly = true)
class ProjectList {

    /** More than this are not counted, nor paged through: whoever looks there narrows the list. */
    static final int COUNTED = 5_000;

    /** An export holds so many rows in memory, however long the list is. */
    static final int EXPORTED_AT_A_TIME = 200;

    /** Named as the record's parts are: a name that is found by its underscores costs an exception a row and column. */
    private static final String COLUMNS = """
            select l.project_id as projectId, l.number, l.name, l.place, l.shown, l.stage, l.mounting,
                   l.system_kw_dc as systemKwDc, l.manager_name as managerName, l.milestone, l.promised_on as promisedOn,
                   l.planned_on as plannedOn, l.late, l.acts_next as actsNext, l.acts_what as actsWhat,
                   l.acts_by as actsBy, l.missing, l.missing_of as missingOf, l.crew_names as crewNames
              from project_line l
             where\s""";

    private final Access access;
    private final ProjectAccess projectAccess;
    private final JdbcClient jdbc;
    private final ApplicationEventPublisher events;

    ProjectList(Access access, ProjectAccess projectAccess, JdbcClient jdbc, ApplicationEventPublisher events) {
        this.access = access;
        this.projectAccess = projectAccess;
        this.jdbc = jdbc;
        this.events = events;
    }

    /**
     * A page of the list.
     *
     * @param counted how many there are, at most {@link #COUNTED}
     * @param more whether there are more than that
     * @param late how many of those counted are late
     */
    record Found(List<ListRow> rows, Paging paging, long counted, boolean more, long late) {}

    private record Count(long counted, long late) {}

    Found find(ListFilter filter) {
        ListQuery query = query(filter, May.SEE_PROJECTS);
        Count count = query.in(jdbc.sql(
                        "select count(*) as counted, count(*) filter (where late) as late from (select l.late from "
                                + "project_line l where " + query.where() + " limit :most) counted"))
                .param("most", COUNTED + 1)
                .query(Count.class)
                .single();
        long counted = Math.min(count.counted, COUNTED);
        Paging paging = Paging.of(filter.pageNumber(), counted);
        List<ListRow> rows = query.in(jdbc.sql(COLUMNS + query.where() + "\n order by "
                        + filter.order().by() + " limit :size offset :offset"))
                .param("size", paging.size())
                .param("offset", paging.offset())
                .query(ListRow.class)
                .list();
        return new Found(rows, paging, counted, count.counted > COUNTED, count.late);
    }

    /** Every row of the list, one after the other, as an export that the firm's owner can look up. */
    @Transactional
    public void export(ListFilter filter, Consumer<ListRow> to) {
        ListQuery query = query(filter, May.EXPORT);
        StatementSpec all = jdbc.sql(COLUMNS + query.where() + "\n order by "
                        + filter.order().by())
                .withFetchSize(EXPORTED_AT_A_TIME);
        try (Stream<ListRow> rows = query.in(all).query(ListRow.class).stream()) {
            rows.forEach(to);
        }
        events.publishEvent(SecurityEvent.of("export", access.actor(), "Took out the list of projects as CSV."));
    }

    /** The crews that were ever booked on a project of the branch, by name. */
    List<Option> crews() {
        return jdbc
                .sql("select crew_id::text as value, name as words from project_crew_told where branch_id = ?")
                .param(access.branch().id())
                .query(Option.class)
                .stream()
                .sorted(Comparator.comparing(Option::words, NaturalOrder.OF_NAMES))
                .toList();
    }

    private ListQuery query(ListFilter filter, May act) {
        BranchCard branch = access.require(act);
        @Nullable Set<UUID> reached = projectAccess.reachOf(branch.id()).orElse(null);
        return ListQuery.of(filter, branch.id(), access.visitor().personId(), reached);
    }
}
