package org.plumbrow.account.firm;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.plumbrow.web.Option;

/** The time zones a branch may live in: offered are those of the United States; the branch settings may name any. */
final class Zones {

    private static final List<Option> USUAL = List.of(
            new Option("America/New_York", "Eastern"),
            new Option("America/Chicago", "Central"),
            new Option("America/Denver", "Mountain"),
            new Option("America/Phoenix", "Mountain, Arizona"),
            new Option("America/Los_Angeles", "Pacific"),
            new Option("America/Anchorage", "Alaska"),
            new Option("Pacific/Honolulu", "Hawaii"),
            new Option("America/Puerto_Rico", "Atlantic, Puerto Rico"));

    private static final Set<String> KNOWN = ZoneId.getAvailableZoneIds();

    private Zones() {}

    static List<Option> options() {
        return USUAL;
    }

    static Optional<ZoneId> of(@Nullable String id) {
        return id != null && KNOWN.contains(id) ? Optional.of(ZoneId.of(id)) : Optional.empty();
    }
}
