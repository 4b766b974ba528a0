package org.plumbrow.schedule.plan;

import java.util.Optional;
import java.util.UUID;
import org.plumbrow.calc.calendar.HalfDay;
import org.plumbrow.calc.duration.EquipmentKind;

/**
 * A shared machine at an activity.
 *
 * @param machineId empty when no machine was free: the plan clashes
 * @param last its last half-day, included
 */
public record MachineBooking(
        UUID activityId, EquipmentKind kind, Optional<UUID> machineId, HalfDay first, HalfDay last) {}
