package org.plumbrow.crew;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.duration.EquipmentKind;

/**
 * One shared machine.
 *
 * @param until its last day; empty while the branch has it
 * @param away in time; only those asked for
 */
public record EquipmentFacts(
        UUID id,
        UUID branchId,
        EquipmentKind kind,
        String name,
        LocalDate from,
        Optional<LocalDate> until,
        List<Away> away,
        long version) {

    public boolean isThereOn(LocalDate date) {
        return !date.isBefore(from) && until.map(last -> !date.isAfter(last)).orElse(true);
    }

    public boolean hasGoneBy(LocalDate date) {
        return until.map(date::isAfter).orElse(false);
    }

    public Optional<Away> awayOn(LocalDate date) {
        return away.stream().filter(time -> time.holds(date)).findFirst();
    }
}
