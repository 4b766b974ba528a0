package org.plumbrow.design.draft;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.plumbrow.design.part.DesignParts;
import org.plumbrow.design.part.Part;

/** Which papers a change of the design touches. */
final class StaleDocuments {

    private StaleDocuments() {}

    /** A paper that shows the design to somebody else. */
    enum Document {
        ONE_LINE(
                "One-line diagram",
                EnumSet.of(
                        Part.SITE,
                        Part.INVERTERS,
                        Part.COMBINERS,
                        Part.STRINGS,
                        Part.RUNS,
                        Part.DEVICES,
                        Part.CONNECTION)),
        LAYOUT("Layout", EnumSet.of(Part.ARRAYS, Part.OBSTRUCTIONS, Part.INVERTERS, Part.RUNS, Part.PLAN)),
        STRING_PLAN("String plan", EnumSet.of(Part.ARRAYS, Part.STRINGS, Part.INVERTERS)),
        STRUCTURAL_LETTER("Structural letter", EnumSet.of(Part.ARRAYS, Part.RACKING)),
        PERMIT_PLANS("Plan set of the permit", EnumSet.complementOf(EnumSet.of(Part.LABELS))),
        INTERCONNECTION("Interconnection application", EnumSet.of(Part.ARRAYS, Part.INVERTERS, Part.CONNECTION)),
        LOCATE("Locate request", EnumSet.of(Part.RUNS, Part.ARRAYS, Part.PLAN)),
        MATERIAL(
                "Bill of material",
                EnumSet.of(Part.ARRAYS, Part.INVERTERS, Part.COMBINERS, Part.RUNS, Part.DEVICES, Part.RACKING)),
        LABEL_SCHEDULE("Label schedule", EnumSet.of(Part.LABELS, Part.DEVICES, Part.CONNECTION));

        private final String title;
        private final Set<Part> shows;

        Document(String title, Set<Part> shows) {
            this.title = title;
            this.shows = shows;
        }

        String title() {
            return title;
        }
    }

    /** Each document that shows something that changed, with the changes that it shows. */
    static Map<Document, String> between(DesignParts before, DesignParts after) {
        Map<Part, List<String>> changed = new EnumMap<>(Part.class);
        for (Part part : Part.values()) {
            if (!before.of(part).equals(after.of(part))) {
                changed.put(part, PartChanges.between(part, before.of(part), after.of(part)));
            }
        }
        Map<Document, String> stale = new EnumMap<>(Document.class);
        for (Document document : Document.values()) {
            List<String> because = new ArrayList<>();
            changed.forEach((part, changes) -> {
                if (document.shows.contains(part)) {
                    because.add(part.title() + ": "
                            + String.join("; ", changes.subList(0, Math.min(3, changes.size()))));
                }
            });
            if (!because.isEmpty()) {
                stale.put(document, String.join(". ", because) + ".");
            }
        }
        return stale;
    }
}
