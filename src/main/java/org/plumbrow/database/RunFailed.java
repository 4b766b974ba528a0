package org.plumbrow.database;

/** Background work that cannot be done, with the sentence that says why and what to do. */
public final class RunFailed extends RuntimeException {

    public RunFailed(String sentence) {
        super(sentence);
    }
}
