package org.plumbrow.project.list;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** In which order the list stands; each has an index behind it. */
enum Order {
    ACTS("acts", "l.acts_by, l.number_year, l.running_number"),
    NUMBER("number", "l.number_year desc, l.running_number desc"),
    NAME("name", "l.name_sorted, l.number_year, l.running_number"),
    STAGE("stage", "l.stage_order, l.acts_by, l.number_year, l.running_number"),
    PROMISE("promise", "l.promised_on, l.number_year, l.running_number");

    private final String inAddress;
    private final String by;

    Order(String inAddress, String by) {
        this.inAddress = inAddress;
        this.by = by;
    }

    /** Who acts next, soonest first, unless the address says otherwise. */
    static Order of(@Nullable String asked) {
        return Arrays.stream(values())
                .filter(order -> order.inAddress.equals(asked))
                .findFirst()
                .orElse(ACTS);
    }

    public String inAddress() {
        return inAddress;
    }

    public String by() {
        return by;
    }

    /** What a head's {@code aria-sort} says. */
    public String direction() {
        return this == NUMBER ? "descending" : "ascending";
    }
}
