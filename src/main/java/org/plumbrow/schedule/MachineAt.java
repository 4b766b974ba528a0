package org.plumbrow.schedule;

import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;

/**
 * A shared machine at one project, as published.
 *
 * @param last its last half-day, included
 */
public record MachineAt(UUID equipmentId, UUID projectId, HalfDay first, HalfDay last) {}
