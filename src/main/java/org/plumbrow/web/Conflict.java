package org.plumbrow.web;

import java.util.List;
import org.springframework.ui.Model;

/**
 * Two people changed the same thing: theirs beside yours, a choice per row, nothing typed is lost. The page posts the
 * chosen values to the form's own address, with the new version; so it needs no more than the form had.
 *
 * @param thing what was changed, as the sentence's object: "this outage window"
 * @param action address of the form
 * @param version the version now stored
 * @param rows every field; only those that differ are shown with a choice
 */
public record Conflict(String thing, String action, long version, List<Row> rows) {

    /**
     * One field: what it is called, what the form calls it, both values as the form sends them, and both as people read
     * them.
     */
    public record Row(String label, String field, String theirs, String yours, String theirsWords, String yoursWords) {

        /** Of values that people read as they are sent. */
        public Row(String label, String field, String theirs, String yours) {
            this(label, field, theirs, yours, theirs, yours);
        }

        public boolean differs() {
            return !theirs.equals(yours);
        }
    }

    /** The view of this conflict; the caller answers 409. */
    public String show(Model model) {
        model.addAttribute("conflict", this);
        return "web/conflict";
    }
}
