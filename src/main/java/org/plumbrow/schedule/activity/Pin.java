package org.plumbrow.schedule.activity;

import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * A start that is settled, because it was told to somebody.
 *
 * @param crewId who does it, where that is settled too
 * @param reason to whom it was told, or why
 */
public record Pin(HalfDay start, Optional<UUID> crewId, String reason) {

    void putInto(Map<String, String> facts, String ending) {
        facts.put("start" + ending, start.date() + " " + start.half().words());
        crewId.ifPresent(crew -> facts.put("crew" + ending, crew.toString()));
        facts.put("reason" + ending, reason);
    }
}
