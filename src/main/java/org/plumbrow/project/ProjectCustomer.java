package org.plumbrow.project;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.util.UUID;

/** Guards the customer's rows as one part: whoever changes a contact moves its version on. */
@Entity
class ProjectCustomer {

    @Id
    private UUID projectId;

    @Version
    private long version;

    private UUID branchId;
    private int changes;

    @SuppressWarnings("NullAway")
    protected ProjectCustomer() {} // for JPA

    ProjectCustomer(UUID projectId, UUID branchId) {
        this.projectId = projectId;
        this.branchId = branchId;
    }

    void change() {
        changes++;
    }

    long version() {
        return version;
    }
}
