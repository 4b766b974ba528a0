package org.plumbrow.cutover.after;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** For whom a report of the day is written: two readings of the same facts. */
enum ReportFor {
    UTILITY,
    CUSTOMER;

    /** As in an address. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<ReportFor> of(String slug) {
        return Arrays.stream(values()).filter(one -> one.slug().equals(slug)).findFirst();
    }
}
