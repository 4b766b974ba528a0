package org.plumbrow.project;

import java.util.Optional;

/** Knows the opposite act of a journal line; each room supplies beans for its own kinds. Offered for 24 hours. */
public interface JournalUndo {

    /** The address that takes the opposite act as a POST; empty for a line of another kind or when it no longer fits. */
    Optional<String> action(JournalLine line);
}
