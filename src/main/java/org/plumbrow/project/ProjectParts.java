package org.plumbrow.project;

import jakarta.persistence.EntityManager;
import java.util.UUID;
import org.plumbrow.web.NotFound;
import org.springframework.stereotype.Repository;

/** Loads and adds the parts of a project, each under its own version. */
@Repository
class ProjectParts {

    private final EntityManager entities;

    ProjectParts(EntityManager entities) {
        this.entities = entities;
    }

    Project project(UUID id) {
        return found(Project.class, id);
    }

    ProjectSite site(UUID id) {
        return found(ProjectSite.class, id);
    }

    ProjectContract contract(UUID id) {
        return found(ProjectContract.class, id);
    }

    ProjectPeople people(UUID id) {
        return found(ProjectPeople.class, id);
    }

    ProjectCustomer customer(UUID id) {
        return found(ProjectCustomer.class, id);
    }

    private <T> T found(Class<T> part, UUID id) {
        T found = entities.find(part, id);
        if (found == null) {
            throw new NotFound();
        }
        return found;
    }

    /** Stores new parts at once, so that rows written by plain SQL in this transaction can refer to them. */
    void add(Object... parts) {
        for (Object part : parts) {
            entities.persist(part);
        }
        entities.flush();
    }

    /** Sends what has changed to the database now, so that SQL in this transaction reads it. */
    void flush() {
        entities.flush();
    }
}
