package org.plumbrow.design.part;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** All parts of a design as they are written; a part that nobody has written is empty. */
public record DesignParts(Map<Part, List<Cells>> rows) {

    public DesignParts {
        Map<Part, List<Cells>> all = new EnumMap<>(Part.class);
        for (Part part : Part.values()) {
            all.put(part, List.copyOf(rows.getOrDefault(part, List.of())));
        }
        rows = Map.copyOf(all);
    }

    public List<Cells> of(Part part) {
        return rows.getOrDefault(part, List.of());
    }

    /** The one row of a part that is no list; an empty one while nobody has written it. */
    public Cells one(Part part) {
        return of(part).isEmpty() ? Cells.none() : of(part).get(0);
    }

    public boolean has(Part part) {
        return !of(part).isEmpty();
    }

    public DesignParts with(Part part, List<Cells> written) {
        Map<Part, List<Cells>> all = new EnumMap<>(rows);
        all.put(part, written);
        return new DesignParts(all);
    }
}
