package org.plumbrow.project.gate;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.plumbrow.project.Stage;

/** By when a gate has to be passed; asked by the gates, answered by the room that plans. */
public interface GateDays {

    /** @return the day on which the published plan needs the gate behind the project; empty while no plan knows it */
    Optional<LocalDate> neededBy(UUID projectId, Stage to);
}
