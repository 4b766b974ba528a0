package org.plumbrow.evidence;

/** What became of a file that somebody brought. */
public sealed interface Keeping {

    record Kept(EvidenceFacts evidence) implements Keeping {}

    /** @param sentence what is wrong with it and what to do */
    record Refused(String sentence) implements Keeping {}
}
