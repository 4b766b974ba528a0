package org.plumbrow.project.gate;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.UUID;
import org.plumbrow.project.Journal;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.Projects;
import org.plumbrow.project.Stage;
import org.plumbrow.web.Actor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Holds a gate still while it is judged: no answer changes until this transaction ends. */
@Component
class GateDoor {

    private final Journal journal;
    private final Projects projects;
    private final GateBook book;
    private final PassageRows passages;
    private final JdbcClient jdbc;

    GateDoor(Journal journal, Projects projects, GateBook book, PassageRows passages, JdbcClient jdbc) {
        this.journal = journal;
        this.projects = projects;
        this.book = book;
        this.passages = passages;
        this.jdbc = jdbc;
    }

    GateView inTurn(UUID projectId, Stage to) {
        return book.open(factsInTurn(projectId), to);
    }

    ProjectFacts factsInTurn(UUID projectId) {
        journal.inTurn(projectId);
        return projects.factsUnchecked(projectId);
    }

    void passed(GateView gate, LocalDate reachedOn, Actor by, Instant at) {
        passages.add(gate, reachedOn, by, at);
    }

    LocalDate today(UUID branchId, Instant now) {
        String zone = jdbc.sql("select zone from branch where id = ?")
                .param(branchId)
                .query(String.class)
                .single();
        return LocalDate.ofInstant(now, ZoneId.of(zone));
    }
}
