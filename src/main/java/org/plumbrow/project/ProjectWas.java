package org.plumbrow.project;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.plumbrow.database.Ids;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What a name, an address or a contact was before: beside the journal, whose line names the row, so that it can be forgotten. */
@Repository
class ProjectWas {

    private final JdbcClient jdbc;

    ProjectWas(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    UUID keepName(UUID projectId, UUID branchId, String name, Instant until) {
        return keep(projectId, branchId, "NAME", name, until);
    }

    UUID keepPlace(UUID projectId, UUID branchId, ProjectFacts.Site site, Instant until) {
        return keep(projectId, branchId, "PLACE", placeOf(site), until);
    }

    UUID keepContact(UUID projectId, UUID branchId, NewProject.NewContact contact, Instant until) {
        String was = String.join(
                "\n",
                contact.name(),
                contact.part(),
                contact.phone(),
                contact.email(),
                contact.language(),
                Boolean.toString(contact.decides()));
        return keep(projectId, branchId, "CONTACT", was, until);
    }

    /** Empty when it was forgotten meanwhile. */
    Optional<NewProject.NewContact> contact(UUID id) {
        return was(id).map(text -> text.split("\n", -1))
                .filter(parts -> parts.length == 6)
                .map(parts -> new NewProject.NewContact(
                        parts[0], parts[1], parts[2], parts[3], parts[4], Boolean.parseBoolean(parts[5])));
    }

    Optional<String> was(UUID id) {
        return jdbc.sql("select was from project_was where id = ?")
                .param(id)
                .query(String.class)
                .optional();
    }

    static String placeOf(ProjectFacts.Site site) {
        return Stream.of(site.street(), site.town(), site.state(), site.zip(), site.latitudeDeg(), site.longitudeDeg())
                .map(part -> Objects.toString(part, ""))
                .collect(Collectors.joining("\n"));
    }

    private UUID keep(UUID projectId, UUID branchId, String what, String was, Instant until) {
        UUID id = Ids.next();
        jdbc.sql("insert into project_was (id, branch_id, project_id, what, was, until) values (?, ?, ?, ?, ?, ?)")
                .params(id, branchId, projectId, what, was, OffsetDateTime.ofInstant(until, ZoneOffset.UTC))
                .update();
        return id;
    }
}
