package org.plumbrow.database;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** What running work is about, and how it tells others how far it is. */
public interface RunProgress {

    UUID branchId();

    /** @return what the work is about within the branch; null for the branch itself */
    @Nullable
    UUID subjectId();

    String askedBy();

    /**
     * Tells how far the work is; may be called often, only some calls reach the database.
     *
     * @param done steps done of {@code total}
     * @param words what is being done, for people: "Placing 212 of 480 visits"
     */
    void step(int done, int total, String words);

    /** @return whether to leave off: somebody asked for it, or this node shuts down (another one then begins anew) */
    boolean isStopped();
}
