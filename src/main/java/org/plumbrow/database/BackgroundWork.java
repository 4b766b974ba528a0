package org.plumbrow.database;

/**
 * Work of one kind that a room does in the background; supply it as a bean. It runs with the rows of its branch only,
 * outside any transaction (it opens its own), on whichever node is free. It must bear being run again from the start:
 * a node may die in the middle.
 */
public interface BackgroundWork {

    /** @return name of the kind, lower case with dashes; kept in the database, so never changed */
    String kind();

    /**
     * @return how it ended, a sentence for the person who asked
     * @throws RunFailed with such a sentence if it cannot be done; anything else thrown is our own fault and goes to the log
     */
    String perform(RunProgress progress);
}
