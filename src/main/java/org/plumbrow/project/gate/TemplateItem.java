package org.plumbrow.project.gate;

/**
 * An item of a checklist as a branch has it.
 *
 * @param version 0 for a shipped item that was never changed
 * @param own made by the branch
 */
public record TemplateItem(AskedItem asked, long version, boolean own, boolean switchedOff) {

    /** Whether the branch has it otherwise than it was shipped. */
    public boolean changed() {
        return version > 0;
    }
}
