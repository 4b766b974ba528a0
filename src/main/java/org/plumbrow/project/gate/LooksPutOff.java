package org.plumbrow.project.gate;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.UUID;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/** Projects whose next gate is looked at once, when a long work of the running transaction is over. */
final class LooksPutOff {

    private LooksPutOff() {}

    /** @return the projects that would have been looked at, in turn, each once */
    static Set<UUID> during(Runnable work) {
        Set<UUID> projects = new LinkedHashSet<>();
        TransactionSynchronizationManager.bindResource(LooksPutOff.class, projects);
        try {
            work.run();
        } finally {
            TransactionSynchronizationManager.unbindResource(LooksPutOff.class);
        }
        return projects;
    }

    /** @return whether it is put off: nothing is to be looked at now */
    @SuppressWarnings("unchecked") // only this class binds under its own name
    static boolean takes(UUID projectId) {
        Set<UUID> projects = (Set<UUID>) TransactionSynchronizationManager.getResource(LooksPutOff.class);
        if (projects != null) {
            projects.add(projectId);
        }
        return projects != null;
    }
}
