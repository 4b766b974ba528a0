package org.plumbrow.crew;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.plumbrow.branch.Written;
import org.plumbrow.calc.calendar.DayWords;
import org.plumbrow.calc.duration.EquipmentKind;

/**
 * What can be changed of a shared machine, all at once.
 *
 * @param until its last day; none while the branch has it
 */
public record EquipmentTerms(
        EquipmentKind kind,
        String name,
        LocalDate from,
        @Nullable LocalDate until) {

    List<Written> written() {
        return List.of(
                Written.of("Kind", "kind", kind, kind.words()),
                Written.of("Name", "name", name),
                Written.of("First day", "from", from, DayWords.withYear(from)),
                Written.of("Last day", "until", until, until == null ? "" : DayWords.withYear(until)));
    }
}
