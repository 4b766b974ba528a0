package org.plumbrow.project;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.database.Ids;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The customer's rows: the journal names them and holds nothing of what stands in them. */
@Repository
class CustomerRows {

    private final JdbcClient jdbc;

    CustomerRows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void begin(UUID projectId, UUID branchId, NewProject begun, Instant at) {
        if (!begun.customer().isBlank()) {
            addCustomer(projectId, branchId, begun.customer(), at);
        }
        begun.contacts().forEach(contact -> addContact(projectId, branchId, contact, at));
    }

    UUID addCustomer(UUID projectId, UUID branchId, String name, Instant at) {
        return add(projectId, branchId, "CUSTOMER", new NewProject.NewContact(name, "", "", "", "en", false), at);
    }

    UUID addContact(UUID projectId, UUID branchId, NewProject.NewContact contact, Instant at) {
        return add(projectId, branchId, "CONTACT", contact, at);
    }

    private UUID add(UUID projectId, UUID branchId, String kind, NewProject.NewContact contact, Instant at) {
        UUID id = Ids.next();
        jdbc.sql("""
                insert into project_contact (id, version, branch_id, project_id, kind, name, part, phone, email, language,
                                             decides, since)
                values (:id, 0, :branch, :project, :kind, :name, :part, :phone, :email, :language, :decides, :since)
                """)
                .param("id", id)
                .param("branch", branchId)
                .param("project", projectId)
                .param("kind", kind)
                .param("name", contact.name())
                .param("part", contact.part())
                .param("phone", contact.phone())
                .param("email", contact.email())
                .param("language", contact.language())
                .param("decides", contact.decides())
                .param("since", OffsetDateTime.ofInstant(at, ZoneOffset.UTC))
                .update();
        return id;
    }

    void change(UUID contactId, NewProject.NewContact to) {
        jdbc.sql("""
                update project_contact
                   set name = :name, part = :part, phone = :phone, email = :email, language = :language,
                       decides = :decides, version = version + 1
                 where id = :id
                """)
                .param("name", to.name())
                .param("part", to.part())
                .param("phone", to.phone())
                .param("email", to.email())
                .param("language", to.language())
                .param("decides", to.decides())
                .param("id", contactId)
                .update();
    }

    /** As it stands, removed or not. */
    NewProject.NewContact contact(UUID contactId) {
        return jdbc.sql("select name, part, phone, email, language, decides from project_contact where id = ?")
                .param(contactId)
                .query(NewProject.NewContact.class)
                .single();
    }

    void end(UUID contactId, Instant at) {
        jdbc.sql("update project_contact set ended_at = ?, version = version + 1 where id = ? and ended_at is null")
                .params(OffsetDateTime.ofInstant(at, ZoneOffset.UTC), contactId)
                .update();
    }

    void bringBack(UUID contactId) {
        jdbc.sql("update project_contact set ended_at = null, version = version + 1 where id = ?")
                .param(contactId)
                .update();
    }

    /** The customer's own row. */
    record Named(UUID id, String name) {}

    Optional<Named> customer(UUID projectId) {
        return jdbc.sql(
                        "select id, name from project_contact where project_id = ? and kind = 'CUSTOMER' and ended_at is null")
                .param(projectId)
                .query(Named.class)
                .optional();
    }
}
