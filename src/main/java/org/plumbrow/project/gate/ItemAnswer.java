package org.plumbrow.project.gate;

import java.util.List;

/**
 * What somebody gives at one item; what is asked for besides may follow later.
 *
 * @param item code: {@code installed.9}
 * @param version the item's version as it was seen; 0 while nobody has answered it
 */
public record ItemAnswer(String item, long version, List<Given> parts) {

    public ItemAnswer {
        parts = List.copyOf(parts);
    }

    /** The first answer at an item. */
    public static ItemAnswer first(String item, Given... parts) {
        return new ItemAnswer(item, 0, List.of(parts));
    }
}
