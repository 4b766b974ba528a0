package org.plumbrow.web;

import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The one sentence after a change, shown where the result is; with the way to undo it where there is one. */
public final class Flash {

    private Flash() {}

    public static void done(RedirectAttributes next, String sentence) {
        next.addFlashAttribute("doneSentence", sentence);
    }

    /** @param undoAction address that takes the opposite act as a POST, with its fields in the query */
    public static void doneWithUndo(RedirectAttributes next, String sentence, String undoAction) {
        done(next, sentence);
        next.addFlashAttribute("undoAction", undoAction);
    }
}
