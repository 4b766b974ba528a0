package org.plumbrow.calc.outage.ranking;

import java.util.List;
import org.plumbrow.calc.outage.Blackout;
import org.plumbrow.calc.outage.Slot;

/**
 * What the customer's days allow.
 *
 * @param blackouts hours in which the power may not be cut
 * @param business school or business hours
 * @param present when somebody is there who may decide; empty: at any time
 * @param medicalEquipment does somebody depend on electrical equipment?
 * @param medicalAgreed is it settled with the customer what happens with it?
 */
public record CustomerDays(
        List<Blackout> blackouts,
        List<Blackout> business,
        List<Slot> present,
        boolean medicalEquipment,
        boolean medicalAgreed) {

    public static final CustomerDays FREE = new CustomerDays(List.of(), List.of(), List.of(), false, false);

    public CustomerDays {
        blackouts = List.copyOf(blackouts);
        business = List.copyOf(business);
        present = List.copyOf(present);
    }
}
