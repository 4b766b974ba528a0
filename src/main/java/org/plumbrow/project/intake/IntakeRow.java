package org.plumbrow.project.intake;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.project.NewProject;

/** What a row of the file means. */
sealed interface IntakeRow {

    /** Line of the file, from 1. */
    int line();

    /**
     * It can be taken in.
     *
     * @param operatingSince day of the permission to operate: it arrives as commissioned; null: it arrives as new
     * @param notes what was assumed
     */
    record Ready(int line, NewProject project, @Nullable LocalDate operatingSince, List<String> notes)
            implements IntakeRow {}

    /** Its reference is here already: it is left as it is. */
    record IsHere(int line, String reference) implements IntakeRow {
        String sentence() {
            return "Line " + line + ": " + reference + " is here already and stays as it is.";
        }
    }

    /** It is left out. @param cells as they stand in the file @param sentences one for each thing to mend */
    record LeftOut(int line, List<String> cells, List<String> sentences) implements IntakeRow {}
}
