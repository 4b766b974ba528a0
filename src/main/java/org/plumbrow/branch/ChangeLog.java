package org.plumbrow.branch;

import java.sql.Timestamp;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.plumbrow.database.Ids;
import org.plumbrow.web.Actor;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Who changed what of a branch's settings, templates, crews and people, when, from what to what. A line is written in
 * the change's own transaction and never again.
 */
@Service
@Transactional(propagation = Propagation.MANDATORY)
public class ChangeLog {

    private static final String LINE = """
            insert into branch_change (id, branch_id, at, person_id, person_name, thing, field, was, now)
            values (:id, :branch, :at, :person, :name, :thing, :field, :was, :now)
            """;

    private final JdbcClient jdbc;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    ChangeLog(JdbcClient jdbc, Clock clock, ApplicationEventPublisher events) {
        this.jdbc = jdbc;
        this.clock = clock;
        this.events = events;
    }

    /** One line for a thing that was added, with all that it began with. */
    public void added(UUID branchId, Actor by, String thing, List<Written> fields) {
        String all = fields.stream()
                .filter(field -> !field.words().isEmpty())
                .map(field -> field.label() + ": " + field.words())
                .collect(Collectors.joining("; "));
        line(branchId, by, thing, new Written.Change("Added", "", all));
    }

    /**
     * One line a field that changed; nothing if nothing did.
     *
     * @param thing what was changed, as people call it: "utility Valley Electric"
     */
    public void changed(UUID branchId, Actor by, String thing, List<Written> before, List<Written> after) {
        for (Written.Change change : Written.changes(before, after)) {
            line(branchId, by, thing, change);
        }
    }

    /** One line for a thing that came, went, or changed as a whole. */
    public void happened(UUID branchId, Actor by, String thing, String field, String was, String now) {
        line(branchId, by, thing, new Written.Change(field, was, now));
    }

    private void line(UUID branchId, Actor by, String thing, Written.Change change) {
        jdbc.sql(LINE)
                .param("id", Ids.next())
                .param("branch", branchId)
                .param("at", Timestamp.from(clock.instant()))
                .param("person", by.personId(), java.sql.Types.OTHER)
                .param("name", by.name())
                .param("thing", thing)
                .param("field", change.field())
                .param("was", change.was())
                .param("now", change.now())
                .update();
        events.publishEvent(new SettingsChanged(branchId));
    }
}
