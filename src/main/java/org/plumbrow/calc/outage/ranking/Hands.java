package org.plumbrow.calc.outage.ranking;

import java.util.List;
import org.plumbrow.calc.outage.CrewOffer;

/**
 * Who and what is needed.
 *
 * @param crews those with a licensed electrician, the preferred one first
 */
public record Hands(List<Crew> crews, List<Machine> machines) {

    public Hands {
        crews = List.copyOf(crews);
        machines = List.copyOf(machines);
    }

    /** @param qualifiedPeople electricians and others who may work on the open gear; two at least are needed */
    public record Crew(CrewOffer offer, int qualifiedPeople) {}

    /** A kind of equipment that the day needs, with every unit that the branch has of it. */
    public record Machine(String kind, List<CrewOffer> units) {
        public Machine {
            units = List.copyOf(units);
        }
    }
}
