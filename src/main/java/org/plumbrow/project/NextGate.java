package org.plumbrow.project;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What the project page shows of the next gate; supplied by the gates. */
public interface NextGate {

    /** Empty behind the last gate. */
    Optional<View> of(ProjectFacts project);

    /**
     * @param to the stage behind the gate
     * @param items how many items it asks for here
     * @param missing the ones that keep it shut, who acts soonest first
     * @param href the gate's own page
     */
    record View(Stage to, int items, List<Item> missing, String href) {}

    /**
     * @param kind "document", "reading, in", "computed, safety"
     * @param shape one of the status shapes of the layout: todo, part, wait, due, trouble, unknown
     * @param state the words beside the shape
     * @param who who acts next on it
     */
    record Item(
            String words,
            String href,
            String kind,
            String shape,
            String state,
            String who,
            @Nullable LocalDate by) {}
}
